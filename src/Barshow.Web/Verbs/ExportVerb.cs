using System.CommandLine;
using Barshow.Data.Archive;

namespace Barshow.Web.Verbs;

/// <summary><c>export FILE</c>: everything the house has, in one archive.</summary>
internal static class ExportVerb
{
    public static void AddTo(RootCommand root)
    {
        var file = new Argument<string>("FILE") { Description = "The archive to write." };
        var overwrite = new Option<bool>("--overwrite") { Description = "Replace a file of that name." };
        var export = new Command("export", "Write everything the house has into one archive.") { file, overwrite };
        export.SetAction((parsed, cancel) => BareHouse.RunAsync(parsed, mustExist: true, (house, stop) => RunAsync(house, parsed.GetValue(file)!, parsed.GetValue(overwrite), stop), cancel));
        root.Subcommands.Add(export);
    }

    private static async Task<int> RunAsync(IServiceProvider house, string file, bool overwrite, CancellationToken cancel)
    {
        if (Directory.Exists(file))
            return CommandLine.Refuse($"{file} is a folder: name a file.");
        if (File.Exists(file) && !overwrite)
            return CommandLine.Refuse($"There is a file {file} already: choose another name, or add --overwrite.");
        await house.GetRequiredService<HouseExport>().ExportAsync(file, cancel);
        Console.WriteLine($"Everything is in {file}.");
        return 0;
    }
}
