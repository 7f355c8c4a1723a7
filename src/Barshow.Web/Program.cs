using Barshow.Web.Verbs;

return await CommandLine.RunAsync(args);

/// <summary>The entry point; named so that host tests can start it.</summary>
public partial class Program;
