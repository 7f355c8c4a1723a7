using Barshow.Engine.Callouts.Speech;
using Barshow.Engine.Findings;
using Barshow.Engine.Names;

namespace Barshow.Engine.Callouts.Checks;

/// <summary>Cautions that neither the film nor the description gives.</summary>
/// <remarks>Allergen classes as the lists of the EU (1169/2011 Annex II), the US (FD&amp;C Act 201(qq)) and Australia and New Zealand (Standard 1.2.3) have them; the raw egg caution as US Food Code 3-302.13.</remarks>
internal static class CautionCheck
{
    private static readonly (SheetCaution Caution, string[] Ingredients)[] Known =
    [
        (new("raw egg", ["egg-", "yolk-"]), ["eggwhite", "eggyolk", "egg", "eggnog"]),
        (new("nuts", ["nut-", "almond-", "allerg-", "hazelnut-", "walnut-", "pistachio-", "orgeat"]), ["orgeat", "almond", "amaretto", "falernum", "hazelnut", "walnut", "pistachio", "pecan", "cashew", "macadamia"]),
        (new("peanut", ["peanut-", "nut-", "allerg-"]), ["peanut"]),
        (new("milk", ["milk", "dairy", "lactose", "cream", "butter"]), ["cream", "milk", "butter", "yogurt", "kefir"]),
        (new("fish", ["fish", "anchov-"]), ["worcestershire", "anchovy"]),
        (new("molluscs", ["mollus-", "clam-", "oyster-", "shellfish"]), ["clam", "oyster"]),
        (new("sesame", ["sesame"]), ["sesame", "tahini"]),
        (new("gluten", ["gluten", "wheat", "barley", "beer"]), ["beer", "stout", "lager", "porter"]),
    ];

    private static readonly Phrase Flaming = new("set fire", "on fire", "set it|this alight", "light it|this|the", "flame|flamed|flaming|flambe", "torch|torched|blowtorch", "ignite|ignited");
    private static readonly Phrase FlameTalk = new("fire extinguisher|safety|hazard", "careful|carefully|caution|safe|safely|safety|danger|dangerous|burn|burns|extinguisher|away from|lid", "never pour", "hair|sleeves|sleeve");
    private static readonly Phrase DryIce = new("dry ice", "liquid nitrogen");
    private static readonly Phrase DryIceTalk = new("never touch|swallow|drink|eat", "don't|do touch|swallow|drink|not", "gloves|tongs|ventilate|ventilated|ventilation|careful|caution|danger|dangerous|burn|burns|frostbite");

    private static readonly HashSet<string> Warning =
    [
        "allerg", "allergic", "allergy", "allergies", "allergen", "allergens", "contain", "contains", "raw", "pasteurised", "pasteurized", "pasteurise", "intolerant", "intolerance", "label", "labels", "careful", "caution", "cautions", "warning", "aware", "avoid", "risk", "safe", "safety", "pregnant", "unwell", "immune", "vegan", "vegans", "cannot", "can't", "cant",
    ];

    public static IEnumerable<Finding> Findings(TaughtFilm film)
    {
        var needed = new Dictionary<string, (SheetCaution Caution, List<string> Drinks)>();
        foreach (var drink in film.Sheet.Drinks)
        {
            foreach (var caution in drink.Cautions ?? Of(drink))
            {
                if (!needed.TryGetValue(caution.Name, out var known))
                    needed[caution.Name] = known = (caution, []);
                known.Drinks.Add(drink.Name);
            }
        }

        foreach (var (caution, drinks) in needed.Values)
        {
            if (film.Speech.Tokens.Count > 0 && !IsGiven(film, caution))
                yield return Missing(film, caution.Name, drinks);
        }

        if (Hazard(film, Flaming, FlameTalk) is { } flame)
            yield return Missing(film, "fire", []) with { TimeSeconds = film.Speech.TimeOf(flame), Said = film.Speech.QuoteSentence(film.Speech.SentenceOf[flame]) };
        if (Hazard(film, DryIce, DryIceTalk) is { } ice)
            yield return Missing(film, "dry ice", []) with { TimeSeconds = film.Speech.TimeOf(ice), Said = film.Speech.QuoteSentence(film.Speech.SentenceOf[ice]) };
    }

    /// <summary>The cautions that the names of a drink's lines ask for.</summary>
    public static IReadOnlyList<SheetCaution> Of(SheetDrink drink)
    {
        var words = drink.Lines.SelectMany(line => Vocabulary.WordsOf(line.Ingredient).Select(word => (word, line))).ToList();
        return [.. Known.Where(known => words.Exists(entry => known.Ingredients.Contains(entry.word) && !IsOther(entry.word, Vocabulary.WordsOf(entry.line.Ingredient)))).Select(known => known.Caution)];
    }

    // Coconut cream is no milk, nor is oat milk; "sherry cream" is left to the label.
    private static bool IsOther(string word, HashSet<string> line) =>
        word is "cream" or "milk" or "butter" && (line.Contains("coconut") || line.Contains("oat") || line.Contains("almond") || line.Contains("soy") || line.Contains("cacao") || line.Contains("cassis") || line.Contains("sherry") || line.Contains("peanut") || line.Contains("cocoa"));

    private static int? Hazard(TaughtFilm film, Phrase hazard, Phrase talk)
    {
        if (hazard.FirstIn(film.Speech, 0, film.Speech.Tokens.Count) is not { } met)
            return null;
        if (met.To - met.From == 2 && film.Speech.Tokens[met.From].Word is "light" && !film.Speech.Tokens.Exists(token => token.Word is "flame" or "match" or "fire" or "lighter" or "torch"))
            return null;
        var sentence = film.Speech.SentenceOf[met.From];
        var from = film.Speech.SentenceStarts[Math.Max(0, sentence - 3)];
        var to = film.Speech.SentenceStarts[Math.Min(film.Speech.Sentences, sentence + 6)];
        var described = SpeechText.Of([new(null, null, film.Sheet.Description ?? "", 1)]);
        return talk.IsIn(film.Speech, from, to) || (hazard.IsIn(described, 0, described.Tokens.Count) && talk.IsIn(described, 0, described.Tokens.Count)) ? null : met.From;
    }

    // A sentence that names the thing and warns of it, on film or in the description.
    private static bool IsGiven(TaughtFilm film, SheetCaution caution)
    {
        var speech = film.Speech;
        for (var sentence = 0; sentence < speech.Sentences; sentence++)
        {
            if (IsGiven(Enumerable.Range(speech.SentenceStarts[sentence], speech.SentenceStarts[sentence + 1] - speech.SentenceStarts[sentence]).Select(i => speech.Tokens[i].Word), caution))
                return true;
        }

        return (film.Sheet.Description ?? "").Split(['.', '\n', '!', ';']).Any(line => IsGiven(NameFolding.Fold(line).Split(' '), caution));
    }

    private static bool IsGiven(IEnumerable<string> words, SheetCaution caution)
    {
        var isNamed = false;
        var isWarned = false;
        foreach (var word in words)
        {
            isNamed |= caution.Words.Any(wanted => wanted[^1] == '-' ? word.StartsWith(wanted[..^1], StringComparison.Ordinal) : word == wanted);
            isWarned |= Warning.Contains(word) || word.StartsWith("allerg", StringComparison.Ordinal) || word.StartsWith("pasteur", StringComparison.Ordinal);
        }

        return isNamed && isWarned;
    }

    private static Finding Missing(TaughtFilm film, string name, List<string> drinks)
    {
        var where = drinks.Count == 0 ? "The film shows" : $"{CheckSentences.Capital(string.Join(", ", drinks.Select(drink => $"the {drink}")))} {(drinks.Count == 1 ? "holds" : "hold")}";
        var remedy = name switch
        {
            "raw egg" => "Say or print: contains raw egg; use pasteurised egg, especially for the young, old, pregnant or unwell.",
            "fire" => "Say or print: follow local rules; never pour from a bottle near a flame, keep a lid and an extinguisher at hand, put it out before drinking.",
            "dry ice" => "Say or print: never touch or swallow it; tongs or gloves, fresh air, no piece in a glass that is drunk.",
            _ => $"Say or print that it contains {name}, with what it comes from.",
        };
        return new(FindingCatalogue.CautionMissing, name, $"{where} {name}, and neither the film nor the description cautions of it.", remedy)
        {
            Drink = drinks.Count > 0 ? drinks[0] : null,
            Expected = name,
        };
    }
}
