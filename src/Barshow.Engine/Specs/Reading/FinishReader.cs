using System.Globalization;
using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;

namespace Barshow.Engine.Specs.Reading;

/// <summary>Reads the closing line of a drink: "shaken 12 seconds, coupe, lime wheel".</summary>
/// <remarks>
/// The parts are separated by commas or semicolons: the method first, then the glass, then the garnish. Ice, strain, straw and "chilled" may stand in any of them.
/// What is not said is filled in by habit (<see cref="ServeHabits"/>). Linear in the length of the line; only the first 2,000 characters are read.
/// </remarks>
public static class FinishReader
{
    private const int Longest = 2000;

    /// <summary>Reads the line.</summary>
    public static Finish Read(string text, BarKit kit, IngredientShelf shelf)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(kit);
        ArgumentNullException.ThrowIfNull(shelf);
        return new FinishReading(text.Length > Longest ? text[..Longest] : text, kit, shelf).Run();
    }

    /// <summary>Whether a line opens as a closing line does: its first part holds a word for a method and no amount before it.</summary>
    public static bool LooksLikeFinish(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var end = text.AsSpan(0, Math.Min(text.Length, Longest)).IndexOfAny(',', ';');
        foreach (var word in FoldedWord.Of(text, new(0, end < 0 ? Math.Min(text.Length, Longest) : end)))
        {
            if (char.IsAsciiDigit(word.Text[0]))
                return false;
            if (FinishWords.Doings.ContainsKey(word.Text) || word.Text is "served" or "method")
                return true;
            if (word.Text is not ("dry" or "hard" or "whip" or "flash" or "gently" or "briefly" or "double" or "reverse" or "quick" or "short" or "long" or "lightly" or "to" or "first"))
                return false;
        }

        return false;
    }
}

/// <summary>One reading of one line.</summary>
internal sealed class FinishReading(string line, BarKit kit, IngredientShelf shelf)
{
    private readonly List<Finding> _findings = [];
    private readonly List<Doing> _doings = [];
    private readonly List<string> _garnish = [];
    private readonly List<(string Name, Glass? Glass)> _glasses = [];
    private int? _seconds;
    private int? _pours;
    private bool _dryShake;
    private bool _noGarnish;
    private bool _hot;
    private bool? _chilled;
    private bool? _straw;
    private IceKind? _ice;
    private IceKind? _tinIce;
    private Straining? _strain;

    public Finish Run()
    {
        var parts = Parts();
        for (var i = 0; i < parts.Count; i++)
            ReadPart(parts[i], isFirst: i == 0);
        var method = MethodRead();
        if (method is null && _glasses.Count == 0 && _garnish.Count == 0 && !_noGarnish)
            _findings.Add(FinishSentences.NothingRead(line));
        var (name, glass) = _glasses.Count > 0 ? _glasses[0] : ("", null);
        var ice = _ice ?? (_strain is Straining.Open ? _tinIce : null) ?? (_hot ? IceKind.None : IceHabit(method?.Kind, name, glass));
        return new(method, new()
        {
            Glass = GlassSlug(name, glass),
            GlassesInstead = [.. _glasses.Skip(1).Select(each => GlassSlug(each.Name, each.Glass))],
            Ice = ice,
            Chilled = _chilled ?? (!_hot && ice is IceKind.None && name.Length > 0 && method is not null),
            Strain = _strain ?? ServeHabits.StrainFor(method?.Kind, ice),
            Straw = _straw ?? false,
        }, _noGarnish ? null : GarnishReader.Read(_garnish, shelf), _findings)
        { GlassName = name, SaysNoGarnish = _noGarnish };
    }

    private static IceKind IceHabit(MethodKind? method, string name, Glass? glass) => name.Length == 0 && method is not MethodKind.Swizzled
        ? IceKind.None
        : ServeHabits.IceFor(method, glass?.IsStemmed ?? GlassNames.SayStemmed(name), glass?.BrimfulMillilitres);

    private static Slug GlassSlug(string name, Glass? glass) => glass?.Slug ?? (name.Length == 0 ? default : Slug.Of(name));

    private List<TextPlace> Parts()
    {
        var parts = new List<TextPlace>();
        var start = 0;
        for (var i = 0; i <= line.Length; i++)
        {
            if (i < line.Length && line[i] is not (',' or ';' or '\n'))
                continue;
            if (!string.IsNullOrWhiteSpace(line[start..i]))
                parts.Add(new(start, i - start));
            start = i + 1;
        }

        return parts;
    }

    private void ReadPart(TextPlace place, bool isFirst)
    {
        var words = FoldedWord.Of(line, place);
        if (words.Count == 0 || TookNoGarnish(words))
            return;
        if (words[0].Text is "garnish" or "garnished" or "topped" or "top")
        {
            // What a top-up is stands among the lines; here it is only an order of work.
            if (words[0].Text.StartsWith("garnish", StringComparison.Ordinal))
                TakeGarnish(words.SkipWhile(word => word.Text is "garnish" or "garnished" or "with" or "is").ToList());
            return;
        }

        TakeManners(words);
        if (words.Count == 0)
            return;
        var holdsMethod = TakeMethod(words, isFirst);
        TakeGlasses(words);
        words.RemoveAll(word => word.Text is "a" or "an" && word == words[0]);
        if (holdsMethod || isFirst)
        {
            TakeUnnamedGlass(words);
            return;
        }

        if (words.TrueForAll(word => FinishWords.Fillers.Contains(word.Text)))
            return;
        if (_glasses.Count == 0 && _garnish.Count == 0 && !LooksLikeGarnish(words))
            _glasses.Add((TextOf(words), null));
        else
            TakeGarnish(words);
    }

    private bool TookNoGarnish(List<FoldedWord> words)
    {
        var text = string.Join(' ', words.Select(word => word.Text));
        if (text is not ("no garnish" or "ungarnished" or "without garnish" or "none" or "garnish none" or "nothing" or "no garnishes"))
            return false;
        return _noGarnish = true;
    }

    private bool TakeMethod(List<FoldedWord> words, bool isFirst)
    {
        var found = false;
        for (var i = 0; i < words.Count; i++)
        {
            // A swizzle stick or a twist of a stirred thing may be a garnish: a method stands in the first part or opens a later one.
            if (!FinishWords.Doings.TryGetValue(words[i].Text, out var doing) || (!isFirst && i > 1 && !found))
                continue;
            found = true;
            var dry = i > 0 && words[i - 1].Text is "dry";
            _dryShake |= dry && doing is Doing.Shake;
            _doings.Add(doing);
        }

        if (isFirst && !found && Repaired(words) is { } repaired)
        {
            _doings.Add(repaired);
            found = true;
        }

        if (!found)
            return false;
        TakeCounts(words);
        words.RemoveAll(word => FinishWords.Doings.ContainsKey(word.Text) || word.Text is "dry" or "whip" or "flash" or "reverse");
        return true;
    }

    private void TakeCounts(List<FoldedWord> words)
    {
        for (var i = 0; i < words.Count; i++)
        {
            if (!TryNumber(words[i].Text, out var number, out var attached))
                continue;
            var unit = attached ?? (i + 1 < words.Count ? words[i + 1].Text : "");
            // "10 to 12 seconds", "10–12 seconds": the longer is the one to plan for.
            if (attached is null && i + 1 < words.Count && (unit is "to" or "or" || TryNumber(unit, out _, out _)))
            {
                words.RemoveRange(i, unit is "to" or "or" ? 2 : 1);
                i--;
                continue;
            }

            if (unit is "s" or "sec" or "secs" or "second" or "seconds")
                _seconds = Math.Clamp(number, 1, 3600);
            else if (unit is "min" or "mins" or "minute" or "minutes")
                _seconds = Math.Clamp(number, 1, 60) * 60;
            else if (unit is "pour" or "pours" or "times" or "time" or "passes" or "throws")
                _pours = Math.Clamp(number, 1, 100);
            else
                continue;
            words.RemoveRange(i, attached is null ? 2 : 1);
            i--;
        }
    }

    private static bool TryNumber(string word, out int number, out string? attached)
    {
        attached = null;
        var digits = word.TakeWhile(char.IsAsciiDigit).Count();
        if (digits is > 0 and < 6)
        {
            number = int.Parse(word.AsSpan(0, digits), NumberStyles.None, CultureInfo.InvariantCulture);
            attached = digits < word.Length ? word[digits..] : null;
            return number > 0;
        }

        return FinishWords.Numbers.TryGetValue(word, out number);
    }

    private Doing? Repaired(List<FoldedWord> words)
    {
        foreach (var word in words.Where(word => word.Text.Length >= 4))
        {
            foreach (var (known, doing) in FinishWords.Doings)
            {
                if (known.Length < 5 || known[0] != word.Text[0] || !OneSlipApart(known, word.Text))
                    continue;
                _findings.Add(FinishSentences.Repaired(line, word, known));
                words.Remove(word);
                return doing;
            }
        }

        return null;
    }

    // One letter wrong, missing, too many, or two neighbours swapped.
    private static bool OneSlipApart(string known, string written)
    {
        if (Math.Abs(known.Length - written.Length) > 1)
            return false;
        var same = 0;
        while (same < Math.Min(known.Length, written.Length) && known[same] == written[same])
            same++;
        var (k, w) = (known[same..], written[same..]);
        return (k.Length == w.Length && k.Length > 0 && k[1..] == w[1..])
            || (k.Length == w.Length && k.Length > 1 && k[0] == w[1] && k[1] == w[0] && k[2..] == w[2..])
            || (k.Length > w.Length && k[1..] == w)
            || (w.Length > k.Length && w[1..] == k);
    }

    private void TakeManners(List<FoldedWord> words)
    {
        foreach (var (phrase, strain) in FinishWords.Strains)
        {
            if (Take(words, phrase))
                _strain ??= strain;
        }

        // "Shaken with crushed ice" speaks of the tin, "over crushed ice" of the glass.
        var inTheTin = words.Exists(word => FinishWords.Doings.TryGetValue(word.Text, out var doing) && doing is not (Doing.Build or Doing.Swizzle or Doing.Layer));
        foreach (var (phrase, ice) in FinishWords.Ices)
        {
            if (!TryTake(words, phrase, out var before))
                continue;
            if (inTheTin && (before is "with" || phrase.StartsWith("with ", StringComparison.Ordinal)))
                _tinIce ??= ice;
            else
                _ice ??= ice;
        }

        if (Take(words, "no straw") || Take(words, "without straw") || Take(words, "without a straw"))
            _straw = false;
        else if (Take(words, "with a straw") || Take(words, "and a straw") || Take(words, "and straw") || Take(words, "paper straw") || Take(words, "straws") || Take(words, "straw"))
            _straw = true;
        if (Take(words, "not chilled") || Take(words, "unchilled") || Take(words, "room temperature"))
            _chilled = false;
        else if (Take(words, "chilled") || Take(words, "well chilled") || Take(words, "frosted") || Take(words, "frozen") || Take(words, "ice cold"))
            _chilled = true;
        if (Take(words, "hot") || Take(words, "heated") || Take(words, "warmed"))
            _hot = true;
    }

    // Removes the phrase where it stands as whole words.
    private static bool Take(List<FoldedWord> words, string phrase) => TryTake(words, phrase, out _);

    private static bool TryTake(List<FoldedWord> words, string phrase, out string before)
    {
        before = "";
        var wanted = phrase.Split(' ');
        for (var i = 0; i + wanted.Length <= words.Count; i++)
        {
            var at = i;
            if (!wanted.Select((word, k) => words[at + k].Text == word).All(same => same))
                continue;
            before = i > 0 ? words[i - 1].Text : "";
            words.RemoveRange(i, wanted.Length);
            return true;
        }

        return false;
    }

    // The longest run of words that the kit knows as a glass, again and again: "coupe or nick and nora".
    private void TakeGlasses(List<FoldedWord> words)
    {
        if (_garnish.Count > 0)
            return;
        var found = new List<(int Start, string Name, Glass Glass)>();
        while (LongestGlass(words) is var (from, count, glass) && glass is not null)
        {
            found.Add((words[from].Place.Start, TextOf(words.GetRange(from, count)), glass));
            words.RemoveRange(from, count);
            while (from > 0 && from - 1 < words.Count && words[from - 1].Text is "or" or "a" or "an" or "in" or "into" or "the")
                words.RemoveAt(--from);
            if (from < words.Count && words[from].Text is "glass")
                words.RemoveAt(from);
        }

        _glasses.AddRange(found.OrderBy(each => each.Start).Select(each => (each.Name, (Glass?)each.Glass)));
    }

    private (int From, int Count, Glass? Glass) LongestGlass(List<FoldedWord> words)
    {
        for (var count = Math.Min(5, words.Count); count > 0; count--)
        {
            for (var from = 0; from + count <= words.Count; from++)
            {
                if (kit.GlassNamed(string.Join(' ', words.GetRange(from, count).Select(word => word.Text))) is { } glass)
                    return (from, count, glass);
            }
        }

        return (0, 0, null);
    }

    // "shaken into a silver cup": words that end in a vessel name a glass the kit does not know.
    private void TakeUnnamedGlass(List<FoldedWord> words)
    {
        var rest = words.SkipWhile(word => FinishWords.Fillers.Contains(word.Text)).ToList();
        if (_glasses.Count == 0 && rest.Count > 0 && FinishWords.Vessels.Contains(rest[^1].Text))
            _glasses.Add((TextOf(rest), null));
    }

    private bool LooksLikeGarnish(List<FoldedWord> words) =>
        !FinishWords.Vessels.Contains(words[^1].Text)
        && (words.Exists(word => FinishWords.Cuts.ContainsKey(word.Text) || word.Text is "rim" or "grated" or "nutmeg" or "cherry" or "cherries" or "olive" or "olives")
            || shelf.Named(TextOf(words)) is not null || GarnishReader.Read([TextOf(words)], shelf) is { Ingredient.IsEmpty: false });

    private void TakeGarnish(List<FoldedWord> words)
    {
        while (words.Count > 0 && words[0].Text is "and" or "with" or "then" or "or" or "the" or "garnish")
            words.RemoveAt(0);
        while (words.Count > 0 && words[^1].Text is "and" or "with" or "garnish" or "for" or "as" or "a")
            words.RemoveAt(words.Count - 1);
        if (words.Count > 0)
            _garnish.Add(TextOf(words));
    }

    // As it was typed, from the first word to the last, unless words between were taken out.
    private string TextOf(List<FoldedWord> words)
    {
        var (start, end) = (words[0].Place.Start, words[^1].Place.End);
        var whole = new TextPlace(start, end - start);
        return FoldedWord.Of(line, whole).Count == words.Count ? whole.Of(line) : string.Join(' ', words.Select(word => word.Place.Of(line)));
    }

    private Method? MethodRead()
    {
        if (_doings.Count == 0)
            return null;
        return new(Kind(), _seconds, _pours, _dryShake);

        bool Did(Doing doing) => _doings.Contains(doing);

        // The step with the most ice decides; a built drink may be stirred briefly, an old-fashioned sugar muddled first.
        MethodKind Kind() =>
            Did(Doing.Blend) ? MethodKind.Blended
            : Did(Doing.Swizzle) ? MethodKind.Swizzled
            : Did(Doing.Shake) ? Did(Doing.Muddle) ? MethodKind.MuddledAndShaken : MethodKind.Shaken
            : Did(Doing.Throw) ? MethodKind.Thrown
            : Did(Doing.Layer) ? MethodKind.Layered
            : Did(Doing.Build) ? Did(Doing.Muddle) ? MethodKind.MuddledAndBuilt : MethodKind.Built
            : Did(Doing.Stir) ? MethodKind.Stirred
            : MethodKind.MuddledAndBuilt;
    }
}
