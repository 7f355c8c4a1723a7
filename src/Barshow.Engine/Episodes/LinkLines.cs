namespace Barshow.Engine.Episodes;

/// <summary>Links as they are typed in a box, one a line: the label, a colon or a comma, then the address.</summary>
public static class LinkLines
{
    /// <summary>"Jigger guide: https://example.org/jiggers", a line each.</summary>
    public static string Write(IReadOnlyList<Link> links)
    {
        ArgumentNullException.ThrowIfNull(links);
        return string.Join('\n', links.Select(link => link.Label.Length == 0 ? link.Address : $"{link.Label}: {link.Address}"));
    }

    /// <summary>Reads them back; the address is the last word of a line when it holds "://", else all behind the last colon.</summary>
    public static IReadOnlyList<Link> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return [.. text.ReplaceLineEndings("\n").Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0).Select(ReadLine)];
    }

    private static Link ReadLine(string line)
    {
        var space = line.LastIndexOf(' ');
        if (line[(space + 1)..].Contains("://", StringComparison.Ordinal))
            return new(line[..(space + 1)].Trim().TrimEnd(':', ',').Trim(), line[(space + 1)..]);
        var colon = line.LastIndexOf(": ", StringComparison.Ordinal);
        return colon < 0 ? new("", line) : new(line[..colon].Trim(), line[(colon + 2)..].Trim());
    }
}
