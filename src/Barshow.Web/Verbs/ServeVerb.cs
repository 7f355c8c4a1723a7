using System.CommandLine;
using Barshow.Web.Hosting;

namespace Barshow.Web.Verbs;

/// <summary><c>serve</c>, and what happens without a verb: the app in the browser.</summary>
internal static class ServeVerb
{
    // Host tests start the program with the framework's own switches.
    private static readonly string[] FrameworkSwitches = ["--environment", "--contentRoot", "--applicationName"];

    public static void AddTo(RootCommand root)
    {
        var port = new Option<int?>("--port") { Description = "Port on this computer. Default: 5230, or the next that is free.", HelpName = "N" };
        port.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int?>() is < 1 or > 65535)
                result.AddError("A port is a number from 1 to 65535.");
        });
        var stockAlone = new Option<bool>("--stock-alone") { Description = "At the very first start bring the stock library alone, without the demo bar." };
        var framework = FrameworkSwitches.Select(name => new Option<string?>(name) { Hidden = true }).ToArray();

        var serve = new Command("serve", "Serve the app on this computer and print its address.") { port, stockAlone };
        root.Options.Add(port);
        root.Options.Add(stockAlone);
        foreach (var option in framework)
            root.Options.Add(option);
        root.SetAction(Run);
        serve.SetAction(Run);
        root.Subcommands.Add(serve);

        async Task<int> Run(ParseResult parsed, CancellationToken cancel)
        {
            var passed = framework
                .Where(option => parsed.GetValue(option) is not null)
                .Select(option => $"{option.Name}={parsed.GetValue(option)}")
                .ToArray();
            await using var app = WebHost.Build(new(parsed.GetValue(CommandLine.Data), parsed.GetValue(port), parsed.GetValue(stockAlone)), passed);
            await app.RunAsync(cancel);
            return 0;
        }
    }
}
