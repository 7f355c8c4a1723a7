using System.CommandLine;
using Barshow.Data.Archive;
using Barshow.Data.Archive.Import;

namespace Barshow.Web.Verbs;

/// <summary><c>import FILE</c>: says what an archive adds, changes and leaves, and takes it in.</summary>
internal static class ImportVerb
{
    private const int LinesShown = 20;

    public static void AddTo(RootCommand root)
    {
        var file = new Argument<string>("FILE") { Description = "The archive to read." };
        var look = new Option<bool>("--dry-run") { Description = "Say what would be done, and do nothing." };
        var import = new Command("import", "Take an archive into the house: all of it or nothing.") { file, look };
        import.SetAction((parsed, cancel) => BareHouse.RunAsync(parsed, mustExist: false, (house, stop) => RunAsync(house, parsed.GetValue(file)!, parsed.GetValue(look), stop), cancel));
        root.Subcommands.Add(import);
    }

    private static async Task<int> RunAsync(IServiceProvider house, string file, bool look, CancellationToken cancel)
    {
        if (!File.Exists(file))
            return CommandLine.Refuse($"There is no file {file}.");
        await using var stream = File.OpenRead(file);
        var today = DateOnly.FromDateTime(house.GetRequiredService<TimeProvider>().GetLocalNow().DateTime);
        var reading = ArchiveReader.Read(stream, today);
        if (reading.Archive is not { } archive)
            return CommandLine.Refuse($"{file} was refused, and nothing was changed. {reading.Refusal}");

        var import = house.GetRequiredService<HouseImport>();
        var plan = await import.PlanAsync(archive, cancel);
        Say(plan);
        if (plan.Objection is { } objection)
            return CommandLine.Refuse(objection);
        if (look)
            return 0;
        var result = await import.ApplyAsync(archive, plan, cancel: cancel);
        if (!result.Done)
            return CommandLine.Refuse("Someone saved something meanwhile, and nothing was imported: try again.");
        Console.WriteLine("Done.");
        return 0;
    }

    private static void Say(ImportPlan plan)
    {
        Console.WriteLine($"Adds {plan.Count(ImportStep.Add)}, changes {plan.Count(ImportStep.Change)}, leaves {plan.Count(ImportStep.Leave)} as they are, adds {plan.Count(ImportStep.AddToBin)} to the bin. {plan.Untouched} that the archive does not have stay.");
        var told = plan.Lines.Where(line => line.Step is not ImportStep.Leave).ToList();
        foreach (var line in told.Take(LinesShown))
            Console.WriteLine($"  {Word(line.Step),-7} {line.Kind,-11} {line.Name}");
        if (told.Count > LinesShown)
            Console.WriteLine($"  and {told.Count - LinesShown} more");
    }

    private static string Word(ImportStep step) => step switch
    {
        ImportStep.Add => "adds",
        ImportStep.Change => "changes",
        ImportStep.AddToBin => "bins",
        _ => "leaves",
    };
}
