using System.Text;
using Barshow.Engine.Callouts.Captions;
using Barshow.Engine.Findings;
using Barshow.Engine.Names;

namespace Barshow.Engine.Callouts.Speech;

/// <summary>Speech joined across its cues, with the cue of every word.</summary>
internal sealed class SpeechText
{
    // Fewer ends of sentences than one in so many words: the captions have no punctuation, and silence has to do for it.
    private const int MostWordsToASentence = 60;
    private const double SilenceSeconds = 1.0;

    // Nobody speaks longer sentences; the bound keeps every look around a word short.
    private const int LongestSentence = 80;

    private static readonly HashSet<string> Abbreviations = ["oz", "fl", "ml", "cl", "tsp", "tbsp", "approx", "no", "vs", "mr", "mrs", "dr", "st", "bsp"];
    private static readonly HashSet<string> Openers = ["next", "now", "then", "okay", "ok", "alright", "finally", "first", "firstly", "lastly"];

    private readonly List<(int Offset, int Cue)> _cueStarts = [];
    private readonly IReadOnlyList<CaptionCue> _cues;

    private SpeechText(IReadOnlyList<CaptionCue> cues, string text)
    {
        _cues = cues;
        Text = text;
    }

    /// <summary>Everything that is said, one space between cues.</summary>
    public string Text { get; private set; }

    /// <summary>The words.</summary>
    public List<SpokenToken> Tokens { get; } = [];

    /// <summary>For each word, the number of its sentence, counted from 0.</summary>
    public int[] SentenceOf { get; private set; } = [];

    /// <summary>For each sentence, its first word; one more entry closes the list.</summary>
    public List<int> SentenceStarts { get; } = [];

    public int Sentences => SentenceStarts.Count - 1;

    public static SpeechText Of(IReadOnlyList<CaptionCue> cues)
    {
        var text = new StringBuilder();
        var starts = new List<(int, int)>();
        for (var i = 0; i < cues.Count; i++)
        {
            var isLine = cues[i].StartSeconds is null;
            if (text.Length > 0)
            {
                // "forty-" at the end of one cue and "five" at the start of the next are one number.
                var isSplit = text[^1] == '-' && text.Length > 1 && char.IsAsciiLetter(text[^2]) && cues[i].Text.Length > 0 && char.IsAsciiLetterLower(cues[i].Text[0]);
                if (!isSplit)
                    text.Append(isLine && (cues[i].Text.Length == 0 || IsLineOfItsOwn(cues, i)) ? CueText.Turn : ' ');
            }

            starts.Add((text.Length, i));
            text.Append(OneLine(cues[i].Text));
        }

        var speech = new SpeechText(cues, text.ToString());
        speech._cueStarts.AddRange(starts);
        speech.Cut();
        speech.Part();
        return speech;
    }

    // A line may end within a number: "forty-" above "five".
    private static string OneLine(string text)
    {
        for (var at = text.IndexOf('\n', StringComparison.Ordinal); at >= 0; at = text.IndexOf('\n', at + 1))
        {
            if (at > 1 && text[at - 1] == '-' && char.IsAsciiLetter(text[at - 2]) && at + 1 < text.Length && char.IsAsciiLetterLower(text[at + 1]))
                return text.Replace("-\n", "-", StringComparison.Ordinal).Replace('\n', ' ');
        }

        return text.Replace('\n', ' ');
    }

    /// <summary>The cue that holds a character.</summary>
    public CaptionCue? CueAt(int offset)
    {
        int low = 0, high = _cueStarts.Count - 1;
        if (high < 0)
            return null;
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (_cueStarts[middle].Offset <= offset)
                low = middle;
            else
                high = middle - 1;
        }

        return _cues[_cueStarts[low].Cue];
    }

    /// <summary>When a word is said: the start of its cue.</summary>
    public double? TimeOf(int token) => token < Tokens.Count ? CueAt(Tokens[token].Start)?.StartSeconds : null;

    /// <summary>The first word that does not end before a character.</summary>
    public int TokenAt(int offset)
    {
        int low = 0, high = Tokens.Count;
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (Tokens[middle].End <= offset)
                low = middle + 1;
            else
                high = middle;
        }

        return low;
    }

    public int SentenceStart(int token) => SentenceStarts[SentenceOf[token]];

    /// <summary>Just after the last word of a word's sentence.</summary>
    public int SentenceEnd(int token) => SentenceStarts[SentenceOf[token] + 1];

    /// <summary>What stands between two places, as it was said.</summary>
    public string Quote(TextPlace place)
    {
        var end = place.End;
        var isOpen = place.Of(Text).Contains('(', StringComparison.Ordinal) && !place.Of(Text).Contains(')', StringComparison.Ordinal);
        if (isOpen && end < Text.Length && Text[end] == ')')
            end++;
        return string.Join(' ', Text[place.Start..end].Replace(CueText.Turn, ' ').Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }

    /// <summary>A sentence as it was said, cut to a length that can be shown.</summary>
    public string QuoteSentence(int sentence)
    {
        var (from, to) = (SentenceStarts[sentence], SentenceStarts[sentence + 1]);
        if (to <= from)
            return "";
        var text = Text[Tokens[from].Start..Tokens[to - 1].End].Replace(CueText.Turn, ' ');
        return text.Length > 160 ? text[..160].TrimEnd() + "…" : text;
    }

    // In text without times a line that begins with an amount, a bullet or a capital after a short line stands for itself.
    private static bool IsLineOfItsOwn(IReadOnlyList<CaptionCue> cues, int i)
    {
        var text = cues[i].Text;
        var before = i > 0 ? cues[i - 1].Text : "";
        if (text.Length == 0 || before.Length == 0)
            return true;
        return !char.IsLetter(text[0]) || (before.Length < 50 && char.IsUpper(text[0]) && before[^1] is not ',') || (!char.IsLetter(before[0]) && before[0] is not '"');
    }

    private void Cut()
    {
        var at = 0;
        while (at < Text.Length)
        {
            if (!IsOfWord(at))
            {
                at++;
                continue;
            }

            var end = at + 1;
            while (end < Text.Length && (IsOfWord(end) || (Text[end] is '\'' or '’' && end + 1 < Text.Length && char.IsLetter(Text[end + 1]))))
                end++;
            var word = Fold(Text.AsSpan(at, end - at));
            Tokens.Add(new(at, end, word, PauseAfter(word, end)));
            at = end;
        }
    }

    private bool IsOfWord(int at) => char.IsLetterOrDigit(Text[at]) || char.GetUnicodeCategory(Text[at]) is System.Globalization.UnicodeCategory.NonSpacingMark or System.Globalization.UnicodeCategory.OtherNumber;

    private static string Fold(ReadOnlySpan<char> word)
    {
        foreach (var c in word)
        {
            if (c >= 128 || c is '\'')
                return c is '\'' || word.ContainsAnyInRange('a', 'z') || word.ContainsAnyInRange('A', 'Z') ? NameFolding.Fold(word.ToString()) : word.ToString();
        }

        return word.ToString().ToLowerInvariant();
    }

    private Pause PauseAfter(string word, int end)
    {
        var pause = Pause.None;
        for (var i = end; i < Text.Length && !IsOfWord(i); i++)
        {
            switch (Text[i])
            {
                case CueText.Turn or '?' or '!':
                    return Pause.Sentence;
                case '.' or '…' when i + 1 >= Text.Length || !char.IsDigit(Text[i + 1]):
                    if (!Abbreviations.Contains(word) || IsCapitalAfter(i))
                        return Pause.Sentence;
                    break;
                case ',' or ';' or ':' or '(' or ')' or '–' or '—' or '"':
                    pause = Pause.Comma;
                    break;
                case '-' when i + 1 < Text.Length && Text[i + 1] is ' ' or '-':
                    pause = Pause.Comma;
                    break;
            }
        }

        return pause;
    }

    private bool IsCapitalAfter(int at)
    {
        for (var i = at + 1; i < Text.Length; i++)
        {
            if (IsOfWord(i))
                return char.IsUpper(Text[i]) && i - at <= 3;
        }

        return false;
    }

    private void Part()
    {
        SentenceOf = new int[Tokens.Count];
        SentenceStarts.Add(0);
        var ends = Tokens.Count(token => token.Pause == Pause.Sentence);
        var isBare = ends * MostWordsToASentence < Tokens.Count;
        for (var i = 0; i < Tokens.Count; i++)
        {
            SentenceOf[i] = SentenceStarts.Count - 1;
            if (i + 1 < Tokens.Count && (Tokens[i].Pause == Pause.Sentence || (isBare && IsSilence(i)) || i + 1 - SentenceStarts[^1] >= LongestSentence))
                SentenceStarts.Add(i + 1);
        }

        if (Tokens.Count > 0)
            SentenceStarts.Add(Tokens.Count);
    }

    private bool IsSilence(int i)
    {
        if (Openers.Contains(Tokens[i + 1].Word) && Tokens[i].Word is not ("and" or "right" or "the" or "our" or "up" or "so" or "okay" or "from" or "for" or "a" or "at" or "back"))
            return true;
        if (Tokens[i + 1].Word is "and" or "okay" or "so" && i + 2 < Tokens.Count && Openers.Contains(Tokens[i + 2].Word))
            return true;
        var (cue, next) = (CueAt(Tokens[i].Start), CueAt(Tokens[i + 1].Start));
        return !ReferenceEquals(cue, next) && next?.StartSeconds - cue?.EndSeconds >= SilenceSeconds;
    }
}
