using System.Text;
using Barshow.Engine.Findings;
using Barshow.Engine.Names;

namespace Barshow.Engine.Episodes.Briefs;

/// <summary>Reads an episode brief as a presenter types it, or the same as JSON. The grammar is in tests/specs/reading-a-brief.md.</summary>
/// <remarks>Never throws on what was typed: what is not understood becomes a finding with its line, and the rest is used.</remarks>
public static class BriefReader
{
    /// <summary>Reads a brief from the bytes of a file; a byte order mark tells UTF-16, all else is UTF-8, or Latin-1 where it is no UTF-8.</summary>
    public static ReadBrief Read(ReadOnlySpan<byte> bytes, Bar bar)
    {
        // A character takes at least one byte, so what lies beyond this many bytes is beyond the limit on characters too.
        var bounded = bytes[..Math.Min(bytes.Length, 4 * BriefTextSplitter.MostCharacters)];
        if (bounded.StartsWith<byte>([0xFF, 0xFE]))
            return Read(Encoding.Unicode.GetString(bounded), bar);
        if (bounded.StartsWith<byte>([0xFE, 0xFF]))
            return Read(Encoding.BigEndianUnicode.GetString(bounded), bar);
        var bad = BadUtf8(bounded);
        if (bad < 0 || bounded.Contains<byte>(0))
            return Read(Encoding.UTF8.GetString(bounded), bar);
        var read = Read(Encoding.Latin1.GetString(bounded), bar);
        return read with { Findings = [BriefFindings.NotUtf8(1 + bounded[..bad].Count((byte)'\n')), .. read.Findings] };
    }

    // Where the bytes stop being UTF-8; a character cut by the bound at the very end does not count. Negative when they never do.
    private static int BadUtf8(ReadOnlySpan<byte> bytes)
    {
        for (var at = 0; at < bytes.Length;)
        {
            var status = Rune.DecodeFromUtf8(bytes[at..], out _, out var length);
            if (status == System.Buffers.OperationStatus.InvalidData)
                return at;
            at += Math.Max(1, length);
        }

        return -1;
    }

    /// <summary>Reads a brief.</summary>
    /// <param name="text">The brief; text, or JSON when it begins with a brace.</param>
    /// <param name="bar">Where glasses and ingredients are looked up.</param>
    public static ReadBrief Read(string text, Bar bar)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(bar);
        var findings = new List<Finding>();
        var parts = text.AsSpan().TrimStart("\uFEFF \t\r\n") is ['{' or '[', ..]
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
