using System.CommandLine;
using Barshow.Data.Opening;
using Barshow.Data.Stores;
using Barshow.Engine.Episodes;
using Barshow.Engine.Episodes.Briefs;
using Barshow.Engine.Findings;
using Barshow.Engine.Names;
using Barshow.Engine.Publishing;
using Barshow.Engine.Publishing.Packaging;
using Barshow.Engine.Shooting;

namespace Barshow.Web.Verbs;

/// <summary><c>package BRIEF --out DIR</c>: everything an episode needs, from a typed brief or a stored episode, as files.</summary>
internal static class PackageVerb
{
    // A brief is read up to 256 kB of characters; a byte more than four times that is never looked at.
    private const int MostBytes = 4 * 256 * 1024 + 1;

    public static void AddTo(RootCommand root)
    {
        var brief = new Argument<string>("BRIEF") { Description = "A brief file, or the name an episode is kept under." };
        var folder = new Option<string>("--out") { Description = "Folder to write into; made when it is missing.", HelpName = "DIR", Required = true };
        folder.Validators.Add(result =>
        {
            if (string.IsNullOrWhiteSpace(result.GetValueOrDefault<string>()))
                result.AddError("Option '--out' names a folder.");
        });
        var verb = new Command("package", "Write an episode's description, lists, running order, call sheet and recipes.") { brief, folder };
        verb.SetAction((parsed, cancel) => RunAsync(parsed.GetRequiredValue(brief), parsed.GetRequiredValue(folder), parsed.GetValue(CommandLine.Data), cancel));
        root.Subcommands.Add(verb);
    }

    private static async Task<int> RunAsync(string brief, string folder, string? data, CancellationToken cancel)
    {
        if (Directory.Exists(brief))
            return CommandLine.Refuse($"\"{brief}\" is a folder; give a brief file.");
        if (File.Exists(folder))
            return CommandLine.Refuse($"\"{folder}\" is a file; give a folder to write into.");
        try
        {
            await using var house = await OpenedHouse.OpenAsync(data, cancel);
            var bar = await house.Get<BarStore>().LoadAsync(cancel);
            if (await FindAsync(house, bar, brief, cancel) is not { } found)
                return CommandLine.Refuse($"There is no file \"{brief}\" and no episode is kept under that name.");
            return await WriteAsync(house, bar, found, folder, cancel);
        }
        catch (Exception problem) when (problem is DatabaseUnusableException or InvalidDataException)
        {
            return CommandLine.Refuse(problem.Message);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return CommandLine.Refuse($"The brief \"{brief}\" cannot be read or the folder \"{folder}\" cannot be written to: {problem.Message}");
        }
    }

    private static async Task<ReadBrief?> FindAsync(OpenedHouse house, Bar bar, string brief, CancellationToken cancel)
    {
        if (File.Exists(brief))
            return BriefReader.Read(await FirstBytesAsync(brief, cancel), bar);
        return Slug.TryParse(brief, out var slug) && await house.Get<EpisodeStore>().FindAsync(slug, cancel) is { } stored
            ? new(stored.Value, [])
            : null;
    }

    private static async Task<byte[]> FirstBytesAsync(string path, CancellationToken cancel)
    {
        await using var file = File.OpenRead(path);
        var bytes = new byte[Math.Min(file.Length, MostBytes)];
        var read = await file.ReadAtLeastAsync(bytes, bytes.Length, throwOnEndOfStream: false, cancel);
        return bytes[..read];
    }

    private static async Task<int> WriteAsync(OpenedHouse house, Bar bar, ReadBrief read, string folder, CancellationToken cancel)
    {
        if (read.Episode is not { } episode)
        {
            await PackageFolder.WriteAsync(folder, [PackageFile.OfText("findings.json", FindingJson.File(read.Findings))], cancel);
            PackageSummary.Write(Console.Out, null, read.Findings, folder);
            return ExitCode(read.Findings);
        }

        var log = await house.Get<FeaturedLogStore>().LoadAsync(cancel);
        var today = DateOnly.FromDateTime(house.Get<TimeProvider>().GetLocalNow().DateTime);
        var work = EpisodeWork.Of(episode, bar, log, today, ShootPlan.Of(episode, bar, cancel: cancel), read.Findings);
        var stored = await EpisodeRecord.KeepAsync(house, episode, today, cancel);
        await PackageFolder.WriteAsync(folder, EpisodePackage.Make(work.Results, new() { MadeAt = house.Get<TimeProvider>().GetLocalNow() }, cancel: cancel).Files, cancel);
        PackageSummary.Write(Console.Out, work, work.Findings, folder);
        if (stored is { } sentence)
            Console.Out.WriteLine(sentence);
        return ExitCode(work.Findings);
    }

    private static int ExitCode(IReadOnlyList<Finding> findings) => findings.Any(finding => finding.Severity == Severity.Stop) ? 2 : 0;
}
