namespace Barshow.Engine.Publishing.Packaging;

/// <summary>What goes into a package beyond the plain files.</summary>
public sealed record PackageSettings
{
    /// <summary>Everything there is.</summary>
    public static PackageSettings Everything { get; } = new();

    /// <summary>When the package is made; null leaves out the calendar, which must say it.</summary>
    public DateTimeOffset? MadeAt { get; init; }

    /// <summary>Whether the callout cards are drawn, a few seconds' work.</summary>
    public bool Cards { get; init; } = true;

    /// <summary>Whether the folder of pages to host is made, with its pictures.</summary>
    public bool Site { get; init; } = true;

    /// <summary>Whether call sheet and mise list are also made as PDF.</summary>
    public bool Pdf { get; init; } = true;
}

/// <summary>How far the packing is.</summary>
/// <param name="File">The file just made.</param>
/// <param name="Done">How many are made.</param>
/// <param name="Of">About how many there will be.</param>
public sealed record PackageProgress(string File, int Done, int Of);
