namespace Barshow.Data.Archive;

/// <summary>The names and bounds of the archive format; ARCHIVE.md beside this file describes it.</summary>
internal static class ArchiveFormat
{
    public const string Name = "barshow-archive";
    public const int Version = 1;

    public const string Manifest = "manifest.json";
    public const string House = "house";
    public const string Kit = "kit";
    public const string Ingredients = "ingredients";
    public const string Drinks = "drinks";
    public const string Episodes = "episodes";
    public const string Featured = "featured";
    public const string Bin = "bin";
    public const string Saved = "saved";
    public const string History = "history";

    /// <summary>The largest file that is opened, in bytes.</summary>
    public const long LongestFile = 64L << 20;

    /// <summary>The most that one entry may hold, unpacked, in bytes.</summary>
    public const long LongestEntry = 64L << 20;

    /// <summary>The most that all entries may hold together, unpacked, in bytes.</summary>
    public const long LongestWhole = 160L << 20;

    /// <summary>The most of the change history that is written, in bytes; older lines are left out first.</summary>
    public const long LongestHistory = 32L << 20;

    /// <summary>Every kind of thing, in the order they depend on one another.</summary>
    public static IReadOnlyList<string> Kinds { get; } = [House, Kit, Ingredients, Drinks, Episodes, Featured];

    /// <summary>Every entry that an archive may hold.</summary>
    public static IReadOnlySet<string> Entries { get; } = Kinds.Append(Bin).Append(Saved).Append(History).Select(Entry).Append(Manifest).ToHashSet();

    public static string Entry(string kind) => kind + ".json";
}
