namespace Barshow.Engine.Callouts.Speech;

/// <summary>Looks for turns of phrase among spoken words.</summary>
internal sealed class Phrase
{
    private readonly Dictionary<string, List<string[]>> _byFirst = [];

    /// <summary>One phrase each, words parted by single spaces; "x|y" stands for either word and "*" for any one word.</summary>
    public Phrase(params string[] phrases)
    {
        foreach (var phrase in phrases)
        {
            var words = phrase.Split(' ');
            foreach (var first in words[0].Split('|'))
            {
                if (!_byFirst.TryGetValue(first, out var list))
                    _byFirst[first] = list = [];
                list.Add(words);
            }
        }
    }

    /// <summary>Where the first phrase within a stretch begins, and where it ends; null when none is there.</summary>
    public (int From, int To)? FirstIn(SpeechText speech, int from, int to)
    {
        for (var i = Math.Max(0, from); i < to; i++)
        {
            if (At(speech, i, to) is var end and > 0)
                return (i, end);
        }

        return null;
    }

    /// <summary>Where the last phrase within a stretch begins, and where it ends.</summary>
    public (int From, int To)? LastIn(SpeechText speech, int from, int to)
    {
        for (var i = to - 1; i >= Math.Max(0, from); i--)
        {
            if (At(speech, i, to) is var end and > 0)
                return (i, end);
        }

        return null;
    }

    public bool IsIn(SpeechText speech, int from, int to) => FirstIn(speech, from, to) is not null;

    /// <summary>The word after a phrase that begins at a word; -1 when none does.</summary>
    public int At(SpeechText speech, int at, int to)
    {
        if (at < 0 || at >= to || !_byFirst.TryGetValue(speech.Tokens[at].Word, out var phrases))
            return -1;
        foreach (var words in phrases)
        {
            if (at + words.Length > to)
                continue;
            var k = 1;
            while (k < words.Length && Fits(speech.Tokens[at + k].Word, words[k]))
                k++;
            if (k == words.Length)
                return at + k;
        }

        return -1;
    }

    private static bool Fits(string word, string wanted)
    {
        if (wanted == "*" || wanted == word)
            return true;
        if (!wanted.Contains('|', StringComparison.Ordinal))
            return false;
        foreach (var range in wanted.AsSpan().Split('|'))
        {
            if (wanted.AsSpan(range).SequenceEqual(word))
                return true;
        }

        return false;
    }
}
