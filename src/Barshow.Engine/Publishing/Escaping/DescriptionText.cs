namespace Barshow.Engine.Publishing.Escaping;

/// <summary>Text for a description box: plain, without angle brackets, which many hosts refuse in titles and descriptions (common platform practice).</summary>
public static class DescriptionText
{
    /// <summary>One line of a description.</summary>
    public static string Line(string? text) => WithoutBrackets(PlainText.Line(text));

    /// <summary>Several lines of a description.</summary>
    public static string Lines(string? text) => WithoutBrackets(PlainText.Lines(text));

    // An arrow typed with a bracket becomes an arrow; a lone bracket becomes the angle quotation mark that looks like it.
    private static string WithoutBrackets(string text) =>
        text.AsSpan().IndexOfAny('<', '>') < 0
            ? text
            : text.Replace("-->", "→", StringComparison.Ordinal)
                .Replace("->", "→", StringComparison.Ordinal)
                .Replace("<--", "←", StringComparison.Ordinal)
                .Replace("<-", "←", StringComparison.Ordinal)
                .Replace('<', '‹')
                .Replace('>', '›');
}
