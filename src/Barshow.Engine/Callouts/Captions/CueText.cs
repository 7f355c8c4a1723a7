using System.Buffers;
using System.Net;
using System.Text;

namespace Barshow.Engine.Callouts.Captions;

/// <summary>The words of a cue: tags, brace codes, sound cues and character references taken off or decoded.</summary>
internal static class CueText
{
    /// <summary>Between what two people say, or where a line of its own begins; no letter and no white space.</summary>
    public const char Turn = '\u2016';

    // A longer stretch in brackets or braces is text, not a sound or a code.
    private const int LongestSound = 80;
    private const int LongestCode = 40;

    private static readonly SearchValues<char> Marks = SearchValues.Create("<&{[>♪");

    /// <summary>The lines that still hold something.</summary>
    public static List<string> Plain(List<string> lines, bool isWebVtt)
    {
        var plain = new List<string>(lines.Count);
        if (lines.TrueForAll(line => line.AsSpan().IndexOfAny(Marks) < 0))
        {
            foreach (var line in lines)
            {
                if (!string.IsNullOrWhiteSpace(line))
                    plain.Add(line.Trim());
            }

            return plain;
        }

        var text = WithoutCodes(string.Join('\n', lines), isWebVtt);
        if (text.Contains('&', StringComparison.Ordinal))
            text = WebUtility.HtmlDecode(text);
        foreach (var line in WithoutSounds(text).Split('\n'))
        {
            if (!string.IsNullOrWhiteSpace(line))
                plain.Add(line.Trim());
        }

        return plain;
    }

    // By the cue text tokenizer a tag runs to the next ">", and an unterminated one swallows the rest; in SubRip a "<" opens a tag only before a letter or a stroke.
    private static string WithoutCodes(string text, bool isWebVtt)
    {
        var plain = new StringBuilder(text.Length);
        var lastClose = text.LastIndexOf('>');
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '<' && (isWebVtt || (i + 1 < text.Length && (char.IsAsciiLetter(text[i + 1]) || text[i + 1] == '/'))))
            {
                var end = i > lastClose ? -1 : text.IndexOf('>', i);
                if (end < 0 && !isWebVtt)
                {
                    plain.Append('<');
                    continue;
                }

                var tag = text.AsSpan(i + 1, (end < 0 ? text.Length : end) - i - 1);
                if (tag.StartsWith("v ", StringComparison.Ordinal) || tag.StartsWith("v.", StringComparison.Ordinal))
                    plain.Append(' ').Append(Turn).Append(' ');
                if (end < 0)
                    break;
                i = end;
                continue;
            }

            if (text[i] == '{' && Close(text, i, '}', LongestCode) is var close and > 0 && (text[i + 1] is '\\' or '/' || close == 2))
            {
                i += close;
                continue;
            }

            plain.Append(text[i]);
        }

        return plain.ToString();
    }

    // "[music]" is no speech, nor are notes; ">>" and a dash at the head of a line say that another person speaks.
    private static string WithoutSounds(string text)
    {
        var speech = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            if (c == '[' && Close(text, i, ']', LongestSound) is var close and > 0)
            {
                i += close;
                continue;
            }

            if (c is '♪' or '♫')
                continue;
            if (c == '>' && i + 1 < text.Length && text[i + 1] == '>')
            {
                speech.Append(' ').Append(Turn).Append(' ');
                while (i + 1 < text.Length && text[i + 1] == '>')
                    i++;
                continue;
            }

            speech.Append(c);
        }

        return speech.ToString();
    }

    private static int Close(string text, int from, char mark, int longest) => text.AsSpan(from, Math.Min(longest, text.Length - from)).IndexOf(mark);
}
