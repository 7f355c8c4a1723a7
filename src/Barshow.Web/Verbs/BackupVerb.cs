using System.CommandLine;
using Barshow.Data.Backup;

namespace Barshow.Web.Verbs;

/// <summary><c>backup [FILE]</c> and <c>restore FILE</c>: the whole database, copied and put back.</summary>
internal static class BackupVerb
{
    public static void AddTo(RootCommand root)
    {
        var to = new Argument<string?>("FILE") { Description = "The backup to write. Default: a new file under backups in the data folder.", Arity = ArgumentArity.ZeroOrOne };
        var backup = new Command("backup", "Copy the database, in use or not, and look whether the copy is sound.") { to };
        backup.SetAction((parsed, cancel) => BareHouse.RunAsync(parsed, mustExist: true, (house, stop) => BackUpAsync(house, parsed.GetValue(to), stop), cancel));
        root.Subcommands.Add(backup);

        var from = new Argument<string>("FILE") { Description = "The backup to put back." };
        var restore = new Command("restore", "Put a backup in the place of the database, which is kept aside.") { from };
        restore.SetAction((parsed, cancel) => BareHouse.RunUnopenedAsync(parsed, mustExist: false, (house, stop) => RestoreAsync(house, parsed.GetValue(from)!, stop), cancel));
        root.Subcommands.Add(restore);
    }

    private static async Task<int> BackUpAsync(IServiceProvider house, string? file, CancellationToken cancel)
    {
        if (Directory.Exists(file))
            return CommandLine.Refuse($"{file} is a folder: name a file.");
        if (File.Exists(file))
            return CommandLine.Refuse($"There is a file {file} already: choose another name.");
        var path = await house.GetRequiredService<HouseBackup>().BackUpAsync(file, cancel: cancel);
        Console.WriteLine($"Backed up to {path}, which was opened and is sound.");
        return 0;
    }

    private static async Task<int> RestoreAsync(IServiceProvider house, string file, CancellationToken cancel)
    {
        var result = await house.GetRequiredService<HouseBackup>().RestoreAsync(file, cancel);
        if (result.Refusal is { } refusal)
            return CommandLine.Refuse($"Nothing was restored. {refusal}");
        Console.WriteLine(result.KeptAside is { } aside ? $"Restored. The database as it was before lies in {aside}." : "Restored.");
        return 0;
    }
}
