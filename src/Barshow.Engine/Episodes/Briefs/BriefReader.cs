using System.Text;
using Barshow.Engine.Findings;
using Barshow.Engine.Names;

namespace Barshow.Engine.Episodes.Briefs;

/// <summary>Reads an episode brief as a presenter types it, or the same as JSON. The grammar is in tests/specs/reading-a-brief.md.</summary>
/// <remarks>Never throws on what was typed: what is not understood becomes a finding with its line, and the rest is used.</remarks>
public static class BriefReader
{
    /// <summary>Reads a brief from the bytes of a file; a byte order mark tells UTF-16, all else is UTF-8.</summary>
    public static ReadBrief Read(ReadOnlySpan<byte> bytes, Bar bar)
    {
        // A character takes at least one byte, so what lies beyond this many bytes is beyond the limit on characters too.
        var bounded = bytes[..Math.Min(bytes.Length, 4 * BriefTextSplitter.MostCharacters)];
        var encoding = bounded.StartsWith<byte>([0xFF, 0xFE]) ? Encoding.Unicode
            : bounded.StartsWith<byte>([0xFE, 0xFF]) ? Encoding.BigEndianUnicode
            : Encoding.UTF8;
        return Read(encoding.GetString(bounded), bar);
    }

    /// <summary>Reads a brief.</summary>
    /// <param name="text">The brief; text, or JSON when it begins with a brace.</param>
    /// <param name="bar">Where glasses and ingredients are looked up.</param>
    public static ReadBrief Read(string text, Bar bar)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(bar);
        var findings = new List<Finding>();
        var parts = text.AsSpan().TrimStart("\uFEFF \t\r\n") is ['{', ..]
            ? new BriefJsonSplitter(findings).Split(text)
            : new BriefTextSplitter(findings).Split(text);
        if (parts.Title is null && parts.Drinks.Count == 0)
        {
            findings.Add(BriefFindings.Empty());
            return new(null, findings);
        }

        var title = parts.Title is { Text.Length: > 0 } given ? given.Text : "Untitled episode";
        var episode = new HeaderReader(bar, findings).Read(parts.Keys, new() { Slug = Slug.Of(title), Title = title, Brief = text });
        var drinks = new DrinkReader(bar, episode, findings);
        var lineup = new List<LineupDrink>();
        foreach (var drink in parts.Drinks)
        {
            var read = drinks.Read(drink);
            if (lineup.Find(earlier => earlier.Spec.Slug == read.Spec.Slug) is { } first)
                findings.Add(BriefFindings.Twice(read.Name, first.BriefLine ?? 0, drink.Name.Line));
            else
                lineup.Add(read);
        }

        if (lineup.Count == 0)
            findings.Add(BriefFindings.NoDrinks(parts.Title?.Line ?? 1));
        return new(episode with { Lineup = lineup }, [.. findings.OrderBy(finding => finding.Line ?? 0)]);
    }
}
