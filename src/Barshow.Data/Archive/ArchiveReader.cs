using System.Text.Json;
using Barshow.Data.Json;

namespace Barshow.Data.Archive;

/// <summary>Reads archives, from a file that anyone may have made, and from the folders that come with the program.</summary>
public static class ArchiveReader
{
    /// <summary>Reads an archive file. Whatever is wrong with it refuses it whole; it never throws for what it holds.</summary>
    /// <param name="file">The file, from its beginning; one that can be searched.</param>
    /// <param name="openedOn">The day that the dates of a demo archive move to.</param>
    public static ArchiveReading Read(Stream file, DateOnly openedOn)
    {
        ArgumentNullException.ThrowIfNull(file);
        return Try(() => Read(ZipEntries.Read(file), openedOn));
    }

    /// <summary>Reads a folder with the entries of an archive as files; other files in it are passed over.</summary>
    public static ArchiveReading ReadFolder(string folder, DateOnly openedOn) => Try(() =>
    {
        var entries = ArchiveFormat.Entries
            .Select(name => (Name: name, Path: Path.Combine(folder, name)))
            .Where(entry => File.Exists(entry.Path))
            .ToDictionary(entry => entry.Name, entry => File.ReadAllBytes(entry.Path));
        return Read(entries, openedOn);
    });

    private static ArchiveReading Try(Func<HouseArchive> read)
    {
        try
        {
            return ArchiveReading.Of(read());
        }
        catch (ArchiveRefusal refusal)
        {
            return ArchiveReading.Refused(refusal.Message);
        }
    }

    private static HouseArchive Read(IReadOnlyDictionary<string, byte[]> entries, DateOnly openedOn)
    {
        var manifest = ManifestOf(entries);
        var current = ArchiveUpgrades.ToCurrent(entries, manifest.Version);
        var bin = One<ArchiveBin>(current, ArchiveFormat.Bin) ?? new();
        var archive = new HouseArchive
        {
            House = new(One<Engine.Episodes.House>(current, ArchiveFormat.House) is { } house ? [house] : [], []),
            Kit = new(One<Engine.Specs.BarKit>(current, ArchiveFormat.Kit) is { } kit ? [kit] : [], []),
            Ingredients = new(Many<Engine.Ingredients.Ingredient>(current, ArchiveFormat.Ingredients), bin.Ingredients),
            Drinks = new(Many<Engine.Specs.Spec>(current, ArchiveFormat.Drinks), bin.Drinks),
            Episodes = new(Many<Engine.Episodes.Episode>(current, ArchiveFormat.Episodes), bin.Episodes),
            Featured = new(Many<Engine.Featured.Feature>(current, ArchiveFormat.Featured), bin.Featured),
            Signatures = Many<Signature>(current, ArchiveFormat.Saved),
            History = Many<ArchivedChange>(current, ArchiveFormat.History),
        };
        ArchiveChecks.Check(archive);
        return manifest.DatesFrom is { } from ? DemoDates.Moved(archive, Days(from, openedOn)) : archive;
    }

    private static int Days(DateOnly from, DateOnly to) => to.DayNumber - from.DayNumber;

    private static ArchiveManifest ManifestOf(IReadOnlyDictionary<string, byte[]> entries)
    {
        if (!entries.TryGetValue(ArchiveFormat.Manifest, out var bytes))
            throw new ArchiveRefusal($"This is no Barshow archive: it holds no {ArchiveFormat.Manifest}.");
        // The format and the version are looked at before the rest, which a newer version may have changed.
        int version;
        try
        {
            using var json = JsonDocument.Parse(WithoutMark(bytes), new() { MaxDepth = 8 });
            var root = json.RootElement;
            if (root.ValueKind != JsonValueKind.Object || !root.TryGetProperty("format", out var format) || format.ValueKind != JsonValueKind.String || format.GetString() != ArchiveFormat.Name)
                throw new ArchiveRefusal($"This is no Barshow archive: its {ArchiveFormat.Manifest} does not name the format \"{ArchiveFormat.Name}\".");
            if (!root.TryGetProperty("version", out var number) || number.ValueKind != JsonValueKind.Number || !number.TryGetInt32(out version) || version < 1)
                throw new ArchiveRefusal($"The archive's version cannot be read: {ArchiveFormat.Manifest} needs a whole number from 1.");
        }
        catch (JsonException problem)
        {
            throw new ArchiveRefusal($"This is no Barshow archive: {ArchiveFormat.Manifest} is no JSON ({Where(problem)}).");
        }

        if (version > ArchiveFormat.Version)
            throw new ArchiveRefusal($"The archive has version {version}, and this Barshow reads versions up to {ArchiveFormat.Version}: a newer Barshow made it.");
        return Parse<ArchiveManifest>(ArchiveFormat.Manifest, bytes);
    }

    private static T? One<T>(IReadOnlyDictionary<string, byte[]> entries, string kind)
        where T : class =>
        entries.TryGetValue(ArchiveFormat.Entry(kind), out var bytes) ? Parse<T>(ArchiveFormat.Entry(kind), bytes) : null;

    private static IReadOnlyList<T> Many<T>(IReadOnlyDictionary<string, byte[]> entries, string kind) =>
        entries.TryGetValue(ArchiveFormat.Entry(kind), out var bytes) ? Parse<IReadOnlyList<T>>(ArchiveFormat.Entry(kind), bytes) : [];

    private static T Parse<T>(string entry, byte[] bytes)
    {
        try
        {
            return JsonSerializer.Deserialize<T>(WithoutMark(bytes).Span, DomainJson.Readable)
                ?? throw new ArchiveRefusal($"The archive's {entry} is empty.");
        }
        catch (JsonException problem)
        {
            throw new ArchiveRefusal($"The archive's {entry} cannot be read at {Where(problem)}: {Reason(problem)}");
        }
        catch (Exception problem) when (problem is ArgumentException or FormatException or InvalidOperationException or OverflowException or NotSupportedException)
        {
            throw new ArchiveRefusal($"The archive's {entry} cannot be read: {problem.Message}");
        }
    }

    private static ReadOnlyMemory<byte> WithoutMark(byte[] bytes) => bytes is [0xEF, 0xBB, 0xBF, ..] ? bytes.AsMemory(3) : bytes;

    private static string Where(JsonException problem) =>
        problem.LineNumber is { } line ? $"line {line + 1}{(problem.Path is null or "$" ? "" : $", {problem.Path}")}" : problem.Path ?? "its beginning";

    // The library's sentence ends with the path and the line, which are said already.
    private static string Reason(JsonException problem)
    {
        var text = (problem.InnerException?.Message ?? problem.Message).ReplaceLineEndings(" ");
        var end = text.IndexOf(" Path: ", StringComparison.Ordinal);
        if (end < 0)
            end = text.IndexOf(" LineNumber: ", StringComparison.Ordinal);
        return end < 0 ? text : text[..end];
    }
}

/// <summary>The first thing in an archive: what it is.</summary>
internal sealed record ArchiveManifest
{
    public required string Format { get; init; }

    public required int Version { get; init; }

    /// <summary>When it was made.</summary>
    public DateTimeOffset? MadeAt { get; init; }

    /// <summary>The day that becomes the day of opening, for an archive whose dates move; null for dates that stay.</summary>
    public DateOnly? DatesFrom { get; init; }
}

/// <summary>What lies in the bin.</summary>
internal sealed record ArchiveBin
{
    public IReadOnlyList<BinnedThing<Engine.Ingredients.Ingredient>> Ingredients { get; init; } = [];

    public IReadOnlyList<BinnedThing<Engine.Specs.Spec>> Drinks { get; init; } = [];

    public IReadOnlyList<BinnedThing<Engine.Episodes.Episode>> Episodes { get; init; } = [];

    public IReadOnlyList<BinnedThing<Engine.Featured.Feature>> Featured { get; init; } = [];
}
