using System.Net;
using Barshow.Engine.Names;

namespace Barshow.Engine.Specs.Reading.Recipes;

/// <summary>The wording of pasted recipes: bullets, keys, sentences.</summary>
internal static class RecipeText
{
    private static readonly char[] Bullets = ['-', '–', '—', '•', '*', '·', '▢', '☐', '‣', '◦', '○', '●', '▪', '✓', '>'];

    /// <summary>A line without its bullet, entities and space around.</summary>
    public static string Plain(string line)
    {
        var text = WebUtility.HtmlDecode(line).Replace('\u00a0', ' ').Trim();
        // A minus is part of an amount only where a figure follows at once, and then the line reader speaks of it.
        return text.Length > 1 && Bullets.Contains(text[0]) && !char.IsAsciiDigit(text[1]) ? text.TrimStart(Bullets).Trim() : text;
    }

    /// <summary>The key of "Glass: coupe", folded; empty when the line has none.</summary>
    public static string KeyOf(string text)
    {
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        return colon is <= 0 or > 24 || text[..colon].Any(char.IsAsciiDigit) || (colon + 2 < text.Length && text[colon + 1] == '/') ? "" : NameFolding.Fold(text[..colon]);
    }

    /// <summary>What stands after the key, or the whole line where its key is none that is known; a step's number is taken off.</summary>
    public static string AfterKey(string text)
    {
        if (RecipeLineRoles.IsKey(KeyOf(text)))
            return text[(text.IndexOf(':', StringComparison.Ordinal) + 1)..].Trim();
        return WithoutNumber(text);
    }

    /// <summary>"2. Strain into a coupe." without its number; a line that only begins with an amount stays whole.</summary>
    public static string WithoutNumber(string text)
    {
        var digits = text.TakeWhile(char.IsAsciiDigit).Count();
        return digits is 1 or 2 && digits + 1 < text.Length && text[digits] is '.' or ')' && text[digits + 1] == ' ' ? text[(digits + 2)..].Trim() : text;
    }

    /// <summary>One closing line, method first, then the garnish, made of closing lines and of sentences.</summary>
    /// <remarks>Commas of sentences are taken out: there only what follows "garnish" is a garnish.</remarks>
    public static string ClosingLine(IReadOnlyList<string> said, IReadOnlyList<string> steps)
    {
        var shorts = new List<string>();
        var garnish = new List<string>();
        foreach (var line in said)
        {
            var key = KeyOf(line);
            var rest = AfterKey(line);
            if (key.StartsWith("garnish", StringComparison.Ordinal))
                garnish.Add(rest);
            else if (key.Length > 0 && IsSentence(rest))
                shorts.Add(rest.Replace(',', ' ').TrimEnd('.'));
            else
                shorts.Add(rest.TrimEnd('.'));
        }

        var sentences = steps.SelectMany(step => AfterKey(step).Split(['.', ';', '!'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)).ToList();
        var doings = new List<string>();
        foreach (var sentence in sentences)
        {
            var at = sentence.IndexOf("garnish", StringComparison.OrdinalIgnoreCase);
            var before = (at < 0 ? sentence : sentence[..at]).Replace(',', ' ').Trim();
            doings.Add(before.EndsWith(" and", StringComparison.Ordinal) ? before[..^4] : before);
            if (at >= 0)
                garnish.Add(sentence[at..]);
        }

        // What was said in short wins; sentences fill in only where nothing was.
        var parts = shorts.Count > 0 && (doings.Count == 0 || shorts.Exists(FinishReader.LooksLikeFinish)) ? shorts : [string.Join(' ', doings), .. shorts];
        return string.Join(", ", [.. parts.Where(part => part.Length > 0), .. garnish.Select(Garnished)]);
    }

    /// <summary>Whether a text is told in a sentence, not in a list.</summary>
    public static bool IsSentence(string text) => text.EndsWith('.') || text.Contains(". ", StringComparison.Ordinal) || text.Count(letter => letter == ' ') >= 9;

    private static string Garnished(string text) =>
        text.StartsWith("garnish", StringComparison.OrdinalIgnoreCase) || text.StartsWith("no", StringComparison.OrdinalIgnoreCase) ? text.TrimEnd('.') : "garnish " + text.TrimEnd('.');
}
