using System.Globalization;
using Barshow.Engine.Callouts.Speech;
using Barshow.Engine.Episodes.Claims;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures.Writing;

namespace Barshow.Engine.Callouts.Checks;

/// <summary>Countable promises, of the title and said on film, against the lineup made once.</summary>
internal static class TitleCheck
{
    private static readonly Phrase Announcing = new("we are|will|have|make|made|do|did", "we're|were|we'll|weve|we've|i'm|im|i'll|ive", "i am|will|have|make|made", "today|tonight", "here are|come", "that is|was", "that's|thats", "these|those are|were", "all of|the|our");
    private static readonly Phrase OfPart = new("next week|time|film|episode|month", "last week|time|film|episode|month", "first|last|other|more|another|of|half|only|just|remaining|left|final|every|each|previous|than|after|before|between|favourite|favorite|these|those|past|standard|dollar", "could|can|should|would|if|or|used|more|left|enough", "everyone|people|guests|friends|somebody", "in one|this", "make|makes about|around|roughly");

    public static IEnumerable<Finding> Findings(TaughtFilm film, List<CheckNotMade> notMade)
    {
        if (film.Sheet.Title is null)
            notMade.Add(new(FindingCatalogue.ClaimBroken.Name, "No title is given, so only what is said on film was checked."));
        foreach (var claim in ClaimReader.Read(film.Sheet.Title ?? ""))
        {
            var finding = claim.Kind switch
            {
                ClaimKind.Drinks => OfDrinks(film, claim, "The title says", null),
                ClaimKind.Bottles => OfBottles(film, claim, notMade),
                ClaimKind.IngredientsEach => OfEach(film, claim),
                _ => NotChecked(claim, notMade),
            };
            if (finding is not null)
                yield return finding;
        }

        foreach (var finding in Spoken(film))
            yield return finding;
    }

    private static IEnumerable<Finding> Spoken(TaughtFilm film)
    {
        if (film.Sheet.Drinks.Count < 2)
            yield break;
        var told = new HashSet<int>();
        for (var sentence = 0; sentence < film.Speech.Sentences; sentence++)
        {
            var (from, to) = (film.Speech.SentenceStarts[sentence], film.Speech.SentenceStarts[sentence + 1]);
            if (to - from > 40 || !Announcing.IsIn(film.Speech, from, to) || OfPart.IsIn(film.Speech, from, to))
                continue;
            var text = string.Join(' ', Enumerable.Range(from, to - from).Select(i => film.Speech.Tokens[i].Word));
            foreach (var claim in ClaimReader.Read(text).Where(claim => claim is { Kind: ClaimKind.Drinks, Number: >= 3 } && told.Add(claim.Number)))
            {
                if (OfDrinks(film, claim, "The film says", from) is { } finding)
                    yield return finding;
            }
        }
    }

    private static Finding? OfDrinks(TaughtFilm film, Claim claim, string who, int? token)
    {
        var count = film.Sheet.Drinks.Count;
        if (count == claim.Number || count == 0)
            return null;
        return new(FindingCatalogue.ClaimBroken, claim.Words, $"{who} \"{claim.Words}\", and the lineup has {Count(count)} {(count == 1 ? "drink" : "drinks")}.", token is null ? "Change the title or the lineup." : "Record the line again or change the lineup.")
        {
            TimeSeconds = token is { } at ? film.Speech.TimeOf(at) : null,
            Said = claim.Words,
            Expected = Count(count),
        };
    }

    private static Finding? OfBottles(TaughtFilm film, Claim claim, List<CheckNotMade> notMade)
    {
        if (film.Sheet.BottleMillilitres is not (> 0 and var size))
        {
            notMade.Add(new(FindingCatalogue.ClaimBroken.Name, $"The size of the bottle is not given, so \"{claim.Words}\" was not checked."));
            return null;
        }

        var (name, millilitres) = Featured(film);
        var room = size * claim.Number;
        if (name is null || millilitres <= room)
            return null;
        var holds = claim.Number == 1 ? "one bottle holds" : $"{Count(claim.Number)} bottles hold";
        return new(FindingCatalogue.ClaimBroken, claim.Words, $"The title says \"{claim.Words}\"; each drink made once pours {Millilitres(millilitres)} of {name}, and {holds} {Millilitres(room)}.", "Pour less, leave a drink out, or change the title.")
        {
            Said = claim.Words,
            Expected = Millilitres(millilitres),
        };
    }

    // The ingredient that the title names, else the one that most drinks pour, and of those the one poured most.
    private static (string? Name, double Millilitres) Featured(TaughtFilm film)
    {
        var convention = film.Sheet.Convention;
        var poured = film.Sheet.Drinks
            .SelectMany((drink, at) => drink.Lines.Select(line => (Words: Vocabulary.WordsOf(line.Ingredient), line, at)))
            .Where(entry => entry.Words.Count > 0)
            .GroupBy(entry => string.Join(' ', entry.Words.Order(StringComparer.Ordinal)))
            .Select(group => (group.First().Words, Name: group.First().line.Ingredient, Drinks: group.Select(entry => entry.at).Distinct().Count(),
                Millilitres: group.Sum(entry => entry.line.Measure?.InMillilitres(convention)?.ToDouble() ?? 0)))
            .Where(entry => entry.Millilitres > 0)
            .ToList();
        if (poured.Count == 0)
            return (null, 0);
        var wanted = Vocabulary.WordsOf(film.Sheet.Featured ?? film.Sheet.Title ?? "");
        var (_, name, _, millilitres) = poured.Where(entry => entry.Words.IsSubsetOf(wanted)).OrderByDescending(entry => entry.Words.Count)
            .Concat(poured.OrderByDescending(entry => entry.Drinks).ThenByDescending(entry => entry.Millilitres).ThenBy(entry => entry.Name, StringComparer.Ordinal))
            .First();
        return (name, millilitres);
    }

    private static Finding? OfEach(TaughtFilm film, Claim claim)
    {
        var over = film.Sheet.Drinks.Where(drink => drink.Lines.Count(line => !line.Optional) > claim.Number).ToList();
        return over.Count == 0
            ? null
            : new(FindingCatalogue.ClaimBroken, claim.Words, $"The title says \"{claim.Words}\"; {string.Join(", ", over.Select(drink => $"the {drink.Name} has {Count(drink.Lines.Count(line => !line.Optional))}"))}.", "Leave a line out, or change the title.") { Said = claim.Words };
    }

    private static Finding? NotChecked(Claim claim, List<CheckNotMade> notMade)
    {
        notMade.Add(new(FindingCatalogue.ClaimBroken.Name, $"\"{claim.Words}\" is not checked here."));
        return null;
    }

    private static string Count(int number) => SpokenNumber.Whole(number);

    private static string Millilitres(double millilitres) => string.Create(CultureInfo.InvariantCulture, $"{millilitres:0.#} ml");
}
