using System.Buffers;
using System.Globalization;

namespace Barshow.Engine.Measures.Reading;

/// <summary>A text cut into tokens, in one pass. Looking past the end gives a token that is the end.</summary>
/// <remarks>Work is counted in characters: one for each that is cut, and a token's length each time the grammar looks at it.</remarks>
internal sealed class TokenRun : IDisposable
{
    private static readonly Token Nothing;
    private const int LongestGlued = 18;
    private const int MostInAngles = 40;
    private Token[] _tokens;
    private char _openAngle;

    public TokenRun(string text)
    {
        Text = text;
        _tokens = ArrayPool<Token>.Shared.Rent(Math.Max(16, Math.Min(text.Length, 1024)));
        Cut();
    }

    public string Text { get; }

    /// <summary>How many tokens there are.</summary>
    public int Count { get; private set; }

    /// <summary>Characters visited so far.</summary>
    public long Visited { get; private set; }

    /// <summary>The token at a position, or the end's.</summary>
    public ref readonly Token this[int index]
    {
        get
        {
            if (index < 0 || index >= Count)
                return ref Nothing;
            ref var token = ref _tokens[index];
            Visited += token.Length;
            return ref token;
        }
    }

    public ReadOnlySpan<char> TextOf(in Token token) => Text.AsSpan(token.Start, token.Length);

    /// <summary>Whether a token touches the one before it.</summary>
    public bool Touches(int index) => index > 0 && index < Count && _tokens[index].Start == _tokens[index - 1].End;

    public void Dispose()
    {
        ArrayPool<Token>.Shared.Return(_tokens);
        _tokens = [];
        Count = 0;
    }

    private void Cut()
    {
        var text = Text;
        var at = 0;
        while (at < text.Length)
        {
            var c = text[at];
            if (IsGap(c))
            {
                at++;
                continue;
            }

            if (c == '&' && Entity(text.AsSpan(at), out var mark) is var length and > 0)
            {
                if (mark != ' ')
                    Add(new(TokenKind.Vulgar, at, length, mark, null));
                at += length;
                continue;
            }

            var kind = KindOf(c);
            var end = at + 1;
            if (kind == TokenKind.Word)
            {
                while (end < text.Length && (IsLetter(text[end]) || IsInnerApostrophe(text, end)))
                    end++;
                AddWord(at, end);
            }
            else
            {
                if (kind is TokenKind.Digits or TokenKind.Raised or TokenKind.Lowered)
                {
                    while (end < text.Length && KindOf(text[end]) == kind)
                        end++;
                }

                Add(new(kind, at, end - at, kind is TokenKind.Mark ? Bracketed(at) : kind is TokenKind.Vulgar ? c : '\0', null));
            }

            at = end;
        }

        Visited += text.Length;
    }

    private void AddWord(int start, int end)
    {
        var word = Text.AsSpan(start, end - start);
        if (word.Length > 2 && word[^1] is 's' && word[^2] is '\'' or '’')
            word = word[..^2];
        var lexeme = Lexicon.Find(Text.AsSpan(start, end - start)) ?? Lexicon.Find(word);

        // A letter typed for the last figure of a glued number: "6Oml", "22.Sml".
        if (lexeme is null && word.Length is > 1 and < 6 && Count > 0 && _tokens[Count - 1].End == start
            && (_tokens[Count - 1].Kind == TokenKind.Digits || _tokens[Count - 1].Is('.') && Count > 1 && _tokens[Count - 2].Kind == TokenKind.Digits)
            && Slip.FigureFor(word[0]) is not null && Lexicon.Find(word[1..]) is { IsStrongUnit: true } unit)
        {
            Add(new(TokenKind.Word, start, 1, '\0', Lexicon.Find(word[..1])));
            Add(new(TokenKind.Word, start + 1, end - start - 1, '\0', unit));
            return;
        }

        if (lexeme is null && Glued(word) is var head and > 0)
        {
            AddWord(start, start + head);
            AddWord(start + head, end);
            return;
        }

        Add(new(TokenKind.Word, start, end - start, '\0', lexeme));
    }

    // Two words without their space: "oneand a half", "one anda half", "halfan ounce", "twoounces". How long the first is; 0 when it is one word.
    private static int Glued(ReadOnlySpan<char> word)
    {
        if (word.Equals("anda", StringComparison.OrdinalIgnoreCase))
            return 3;
        for (var head = 3; head <= word.Length - 2 && word.Length <= LongestGlued; head++)
        {
            if (Lexicon.Find(word[..head]) is { } first && (first.Cardinal is not null && (first.Role & Role.Vague) == 0 || first.Share is not null)
                && Lexicon.Find(word[head..]) is { } second && (second.Word is "and" or "an" || second is { IsStrongUnit: true, Word.Length: > 1 } && second.Word is not ("os" or "ox")))
                return head;
        }

        return 0;
    }

    // Angles are brackets only after something, around a number, and closed: "¾ oz <22.5 ml> lemon juice".
    private char Bracketed(int at)
    {
        var plain = Plain(Text[at]);
        if (_openAngle != '\0' && plain == _openAngle)
        {
            _openAngle = '\0';
            return ']';
        }

        var close = plain switch { '<' => '>', '«' => '»', '‹' => '›', _ => '\0' };
        if (close == '\0' || Count == 0)
            return plain;
        var inside = Text.AsSpan(at + 1, Math.Min(MostInAngles, Text.Length - at - 1));
        var number = inside.TrimStart();
        if (number.IsEmpty || KindOf(number[0]) is not (TokenKind.Digits or TokenKind.Vulgar) || !inside.Contains(close))
            return plain;
        _openAngle = close;
        return '[';
    }

    private void Add(Token token)
    {
        if (Count == _tokens.Length)
        {
            var larger = ArrayPool<Token>.Shared.Rent(2 * Count);
            _tokens.AsSpan(0, Count).CopyTo(larger);
            ArrayPool<Token>.Shared.Return(_tokens);
            _tokens = larger;
        }

        _tokens[Count++] = token;
    }

    // What pages leave in pasted lines: "2&nbsp;oz", "&frac12; oz".
    private static int Entity(ReadOnlySpan<char> text, out char mark)
    {
        (mark, var length) = text switch
        {
            _ when text.StartsWith("&nbsp;", StringComparison.Ordinal) => (' ', 6),
            _ when text.StartsWith("&frac12;", StringComparison.Ordinal) => ('½', 8),
            _ when text.StartsWith("&frac14;", StringComparison.Ordinal) => ('¼', 8),
            _ when text.StartsWith("&frac34;", StringComparison.Ordinal) => ('¾', 8),
            _ => (' ', 0),
        };
        return length;
    }

    private static bool IsGap(char c) => c == ' ' || (c < 128 ? c is '\t' or '\r' or '\n' or '\f' or '\v' : char.IsWhiteSpace(c) || IsInvisible(c));

    private static bool IsInvisible(char c) => c is '\u00AD' or (>= '\u200B' and <= '\u200F') or (>= '\u2060' and <= '\u2064') or '\uFEFF' or '\uFE0E' or '\uFE0F';

    private static bool IsLetter(char c) => c < 128
        ? char.IsAsciiLetter(c)
        : char.IsLetter(c) || CharUnicodeInfo.GetUnicodeCategory(c) is UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark;

    private static bool IsInnerApostrophe(string text, int at) => text[at] is '\'' or '’' && at + 1 < text.Length && IsLetter(text[at + 1]);

    private static TokenKind KindOf(char c)
    {
        if (c < 128)
            return char.IsAsciiLetter(c) ? TokenKind.Word : char.IsAsciiDigit(c) ? TokenKind.Digits : TokenKind.Mark;
        if (VulgarFraction.TryValue(c, out _))
            return TokenKind.Vulgar;
        if (c is '¹' or '²' or '³' or '⁰' or (>= '⁴' and <= '⁹'))
            return TokenKind.Raised;
        if (c is >= '₀' and <= '₉')
            return TokenKind.Lowered;
        if (CharUnicodeInfo.GetDecimalDigitValue(c) >= 0)
            return TokenKind.Digits;
        return IsLetter(c) || c is '㎖' or '㏄' ? TokenKind.Word : TokenKind.Mark;
    }

    private static char Plain(char c) => c switch
    {
        '⁄' or '∕' or '／' => '/',
        '‐' or '‑' or '﹣' or '－' => '-',
        '‒' or '—' or '―' => '–',
        '（' => '(',
        '）' => ')',
        '〔' or '【' or '［' or '〖' or '「' or '『' or '〈' or '《' or '⟨' or '❨' => '[',
        '〕' or '】' or '］' or '〗' or '」' or '』' or '〉' or '》' or '⟩' or '❩' => ']',
        '｛' => '{',
        '｝' => '}',
        '＜' => '<',
        '＞' => '>',
        '，' => ',',
        '．' => '.',
        '：' => ':',
        '∙' or '•' or '⋅' => '·',
        '～' or '∼' => '~',
        '✕' or '✖' or '⨯' => '×',
        _ => c,
    };
}
