using Barshow.Engine.Callouts.Speech;
using Barshow.Engine.Names;

namespace Barshow.Engine.Callouts.Segments;

/// <summary>Finds the drinks' names, their aliases and what captions make of them.</summary>
internal sealed class NameFinder
{
    private static readonly Phrase Opening = new(
        "first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|last|next|final", "number *", "next up", "up next", "called", "call it|this", "this is|one's|ones", "that's|thats the|a|our", "here is|comes|we", "here's|heres", "meet", "make|making|build|building|do|doing|start|starting|begin|beginning|try|finish|finishing|go|going|move|moving|come|coming", "on to", "onto", "time for", "now", "back to|at|with", "correction|correct|fix|mistake|wrong on|in|about|with|for", "it's|its the|a|our", "is the|a|our", "welcome to", "name is", "the one|drink", "let's|lets", "in the|our|your|this", "for the|our|your|this", "your|our|my", "with the|our|a");

    private static readonly Phrase Beside = new(
        "since", "like|than|unlike|versus|vs", "halfway to", "cousin|sister|brother|child|parent|uncle|aunt|relative|version|variation|twist|riff|take|spin of|on|to", "as in|with", "same as|in", "similar to", "remember", "from the|our", "after|before|between", "not the|a|like", "reminds|reminded", "as the", "left from|over", "used in|for", "earlier", "next to", "once you|we|it", "if you", "coming|later", "with the last");

    private static readonly Phrase Teasing = new(
        "coming up", "later on|in|today|tonight", "stay tuned|with|till|until|to", "in a minute|moment|bit|while", "by the end", "next time|week|film|episode|month", "before we|you get|start|begin|go", "that was|is it|all", "so that's|thats|was|those", "we made|have|did", "we've|weve made|done|had", "you've|youve seen|made", "recap", "my favourite|favorite", "favourite|favorite", "thanks for");

    private readonly List<(string[] Words, int Drink, bool IsPart)> _names = [];
    private readonly Dictionary<string, List<int>> _byFirst = [];
    private readonly SpeechText _speech;

    public NameFinder(SpeechText speech, FilmSheet sheet)
    {
        _speech = speech;
        for (var drink = 0; drink < sheet.Drinks.Count; drink++)
        {
            foreach (var name in sheet.Drinks[drink].Aliases.Prepend(sheet.Drinks[drink].Name))
            {
                var words = NameFolding.Fold(name).Split(' ', StringSplitOptions.RemoveEmptyEntries);
                if (words is ["the" or "a" or "our", _, ..])
                    words = words[1..];
                if (words.Length > 0)
                    _names.Add((words, drink, false));
            }
        }

        AddParts(sheet);
        for (var i = 0; i < _names.Count; i++)
        {
            var key = Key(_names[i].Words[0]);
            if (!_byFirst.TryGetValue(key, out var list))
                _byFirst[key] = list = [];
            list.Add(i);
        }
    }

    /// <summary>Every name, in the order of the speech.</summary>
    public List<NameMention> Find()
    {
        var found = new List<NameMention>();
        var tokens = _speech.Tokens;
        for (var i = 0; i < tokens.Count; i++)
        {
            (int To, int Drink, bool IsPart) best = (-1, -1, true);
            foreach (var key in Keys(tokens[i].Word))
            {
                if (!_byFirst.TryGetValue(key, out var candidates))
                    continue;
                foreach (var candidate in candidates)
                {
                    var (words, drink, isPart) = _names[candidate];
                    var to = End(i, words);
                    if (to > 0 && (to > best.To || (to == best.To && best.IsPart && !isPart)) && !(isPart && !IsPointedAt(i)))
                        best = (to, drink, isPart);
                }
            }

            if (best.To < 0)
                continue;
            found.Add(new(best.Drink, i, best.To, best.IsPart ? Naming.Plain : Naming.Opening));
            i = best.To - 1;
        }

        return Weighed(found);
    }

    // "The Garden" for the Kitchen Garden, where no other drink and no ingredient has the word.
    private void AddParts(FilmSheet sheet)
    {
        var whole = _names.ToList();
        var ingredients = sheet.Drinks.SelectMany(drink => drink.Lines).SelectMany(line => Vocabulary.WordsOf(line.Ingredient)).ToHashSet();
        foreach (var (words, drink, _) in whole.Where(name => name.Words.Length is 2 or 3))
        {
            foreach (var word in new[] { words[0], words[^1] })
            {
                if (word.Length >= 5 && Vocabulary.WeightOf(word) == 0 && !ingredients.Contains(word) && !whole.Exists(other => other.Drink != drink && other.Words.Contains(word)))
                    _names.Add(([word], drink, true));
            }
        }
    }

    private bool IsPointedAt(int i) => i > 0 && _speech.Tokens[i - 1].Word is "the" or "our" or "this" or "a" or "your";

    private static string Key(string word) => word.Length >= 5 ? word[..1] : word;

    private static IEnumerable<string> Keys(string word) => word.Length == 0 ? [] : word.Length >= 4 ? [word, word[..1]] : [word];

    // Names may be heard in one word ("kitchengarden") or a slip away.
    private int End(int at, string[] words)
    {
        var tokens = _speech.Tokens;
        var token = at;
        for (var k = 0; k < words.Length; k++, token++)
        {
            if (token >= tokens.Count)
                return -1;
            var word = tokens[token].Word;
            if (word == words[k] || (word.Length > 4 && (word == words[k] + "s" || words[k] == word + "s")) || LineupWords.IsNear(word, words[k]))
                continue;
            if (k + 1 < words.Length && word.Length >= 6 && (word == words[k] + words[k + 1]))
            {
                k++;
                continue;
            }

            return -1;
        }

        return token;
    }

    // How many other drinks are named in the same sentence.
    private static int Others(List<NameMention> found, int i, int from, int to)
    {
        var others = new HashSet<int>();
        for (var k = i - 1; k >= 0 && found[k].From >= from; k--)
            others.Add(found[k].Drink);
        for (var k = i + 1; k < found.Count && found[k].From < to; k++)
            others.Add(found[k].Drink);
        others.Remove(found[i].Drink);
        return others.Count;
    }

    private List<NameMention> Weighed(List<NameMention> found)
    {
        for (var i = 0; i < found.Count; i++)
        {
            var mention = found[i];
            var (from, to) = (_speech.SentenceStart(mention.From), _speech.SentenceEnd(mention.From));
            var near = Math.Max(from, mention.From - 9);
            var others = Others(found, i, from, to);
            var isTeased = Teasing.IsIn(_speech, from, to);
            var isBeside = Beside.LastIn(_speech, near, mention.From) is { } beside && mention.From - beside.To <= 3;
            var naming = isTeased || others >= 2 || isBeside ? Naming.Passing
                : mention.Naming == Naming.Opening && (from >= mention.From - 2 || Opening.IsIn(_speech, near, mention.From) || to - from <= 5) ? Naming.Opening
                : Naming.Plain;
            found[i] = mention with { Naming = naming };
        }

        return found;
    }
}
