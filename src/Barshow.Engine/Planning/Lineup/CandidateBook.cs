using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;
using Barshow.Engine.Planning.Baskets;

namespace Barshow.Engine.Planning.Lineup;

/// <summary>All that a question asks about its catalogue, worked out once: the drinks that may be chosen, and what they make a viewer buy.</summary>
internal sealed partial class CandidateBook
{
    /// <summary>Amounts are whole numbers of a thousandth of their unit.</summary>
    public const long Scale = 1000;

    private readonly Dictionary<string, int> _features = new(StringComparer.Ordinal);
    private readonly List<Ingredient> _preps = [];
    private readonly Dictionary<Slug, int> _prepPlaces = [];
    private readonly List<Finding> _findings = [];

    private CandidateBook(LineupQuestion question)
    {
        Question = question;
        Requirements = Requirement.Of(question);
    }

    public LineupQuestion Question { get; }

    public IReadOnlyList<Requirement> Requirements { get; private set; }

    /// <summary>In order of slug.</summary>
    public IReadOnlyList<Candidate> Candidates { get; private set; } = [];

    /// <summary>In order of slug.</summary>
    public IReadOnlyList<Thing> Things { get; private set; } = [];

    /// <summary>What can make a lineup varied: "method: stirred".</summary>
    public IReadOnlyList<string> Features { get; private set; } = [];

    /// <summary>For each of <see cref="Features"/>, whether it is a family.</summary>
    public IReadOnlyList<bool> IsFamily { get; private set; } = [];

    /// <summary>House preps with their hands-on minutes.</summary>
    public IReadOnlyList<(Ingredient Prep, int Minutes)> Preps { get; private set; } = [];

    /// <summary>Pairs of candidates that are one drink under two names.</summary>
    public IReadOnlyList<(int First, int Second)> Alike { get; private set; } = [];

    /// <summary>Whether every pack of every candidate has a price; else costs count packs.</summary>
    public bool Priced { get; private set; }

    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>Drinks to choose: never more than asked.</summary>
    public int Count => Math.Max(0, Question.Count);

    /// <summary>The most of the bottle the viewer's lineup may pour, in thousandths of a millilitre; null without such a requirement.</summary>
    public long? BottleAtHome { get; private set; }

    /// <summary>The same from the shoot's bottles, brought back to each drink made once.</summary>
    public long? BottleOnSet { get; private set; }

    /// <summary>The place of a requirement of a kind without a subject; -1 when it is not asked.</summary>
    public int PlaceOf(RequirementKind kind)
    {
        for (var i = 0; i < Requirements.Count; i++)
        {
            if (Requirements[i].Kind == kind)
                return i;
        }

        return -1;
    }

    public static CandidateBook Of(LineupQuestion question)
    {
        var book = new CandidateBook(question);
        var drafts = new Drafts(question).All();
        book.Things = book.ThingsOf(drafts);
        book.Candidates = [.. drafts.Select(book.CandidateOf)];
        book.Features = [.. book._features.OrderBy(feature => feature.Value).Select(feature => feature.Key)];
        book.IsFamily = [.. book.Features.Select(feature => feature.StartsWith("family: ", StringComparison.Ordinal))];
        book.Preps = [.. book._preps.Select(prep => (prep, Math.Max(1, (int)Math.Ceiling(prep.Prep!.HandsOn.TotalMinutes))))];
        book.Alike = question.NoTwoAlike ? AlikeDrinks.Pairs([.. book.Candidates.Select(candidate => candidate.Spec)], question.Bar.Ingredients) : [];
        book.LeaveOutSwapsThatAreThereAlready();
        book.SetBottles();
        book.DropWhatCannotBeChecked();
        return book;
    }

    // A drink whose base was swapped into another of the catalogue adds nothing: the other is the one to choose.
    private void LeaveOutSwapsThatAreThereAlready()
    {
        var place = PlaceOf(RequirementKind.Alike);
        var needless = Alike.SelectMany(pair => new[] { (One: pair.First, Other: pair.Second), (One: pair.Second, Other: pair.First) })
            .Where(pair => Candidates[pair.One].Swapped && !Candidates[pair.Other].Swapped)
            .Select(pair => pair.One)
            .ToHashSet();
        Candidates = [.. Candidates.Select((candidate, at) => needless.Contains(at) ? candidate with { Breaks = [.. candidate.Breaks, place] } : candidate)];
    }

    private void SetBottles()
    {
        if (Question.Bottle is not { Millilitres: > 0 and var size } || !double.IsFinite(size))
            return;
        var makings = Math.Max(1, Question.Takes) + Math.Max(0, Question.Bar.House.RehearsalsPerDrink);
        var each = makings * (1 + Math.Max(0, Question.Bar.House.SpillShare));
        if (PlaceOf(RequirementKind.BottleAtHome) >= 0)
            BottleAtHome = (long)Math.Floor(Math.Min(size, 1e9) * Scale + 0.5);
        if (PlaceOf(RequirementKind.BottlesOnSet) >= 0)
            BottleOnSet = (long)Math.Floor(Math.Max(0, Question.ShootBottles!.Value) * Math.Min(size, 1e9) * Scale / each + 0.5);
    }

    private void DropWhatCannotBeChecked()
    {
        if (!Priced && PlaceOf(RequirementKind.Money) is >= 0 and var money)
        {
            _findings.Add(PlanningFindings.MoneyNotChecked(Requirements[money]));
            // The place stays, so that other places keep their meaning; the rule is not made.
            MoneyChecked = false;
        }
    }

    /// <summary>Whether the limit of money can be checked at all.</summary>
    public bool MoneyChecked { get; private set; } = true;

    private IReadOnlyList<Thing> ThingsOf(IReadOnlyList<Draft> drafts)
    {
        var bought = drafts.SelectMany(draft => draft.Needs).GroupBy(need => need.Slug).OrderBy(group => group.Key).Select(group => (Needs: group.ToList(), Buying: BuyingOf([.. group]))).ToList();
        // What only drinks ruled out would need is no reason to plan without prices.
        var open = drafts.Where(draft => !Requirements.Any(requirement => IsBroken(requirement, draft))).SelectMany(draft => draft.Needs).Select(need => need.Slug).ToHashSet();
        var unpriced = bought.Where(thing => open.Contains(thing.Needs[0].Slug)).Where(thing => thing.Buying is null || thing.Buying.Packs.Any(pack => pack.Pack.Price is null)).Select(thing => thing.Needs[0].Name).ToList();
        Priced = unpriced.Count == 0;
        if (!Priced)
            _findings.Add(PlanningFindings.PlannedByCount(unpriced));
        // Where prices count, a thing that cannot be chosen may stay without one.
        return [.. bought.Select((thing, place) => ThingOf(place, thing.Needs, Priced ? thing.Buying : WithoutPrices(thing.Buying)))];
    }

    private Buying? BuyingOf(IReadOnlyList<Need> needs) => needs[0].Ingredient is { } ingredient
        ? Buying.Of(
            ingredient,
            needs.All(need => need.IsFruit) ? [Quantity.Pieces(1)] : [.. needs.SelectMany(need => need.Quantities).Select(quantity => quantity with { Amount = 1 }).Distinct()],
            Buying.PacksOf(ingredient, Question.Bottle),
            Question.Bar.House.BarSizes)
        : null;

    private static Buying? WithoutPrices(Buying? buying) => buying is null ? null : buying with { Packs = [.. buying.Packs.Select(pack => (pack.Pack with { Price = null }, pack.Holds))] };

    private Thing ThingOf(int place, IReadOnlyList<Need> needs, Buying? buying)
    {
        var shape = needs.All(need => need.IsFruit) ? ShapeOf(needs[0].Ingredient!, needs) : null;
        foreach (var need in needs)
            need.Uses = [.. UsesOf(need, place, buying, shape)];
        var most = needs.Select(need => shape is null ? need.Uses.Sum(use => use.Amount) : FruitFor(shape, need)).OrderDescending().Take(Count).Sum();
        return new(needs[0].Slug, needs[0].Name, buying, shape, most);
    }

    private static long FruitFor(FruitShape shape, Need need)
    {
        var sums = new long[2 + shape.Cuts.Count];
        foreach (var use in need.Uses)
            sums[use.Facet] += use.Amount;
        return shape.Fewest(sums) * Scale;
    }

    private static FruitShape ShapeOf(Ingredient fruit, IEnumerable<Need> needs)
    {
        var cuts = needs.SelectMany(need => need.Quantities).Where(quantity => quantity.Kind is QuantityKind.Pieces).Select(quantity => quantity.Cut).Distinct()
            .OrderBy(cut => cut?.Name, StringComparer.Ordinal).ToList();
        return new((long)Math.Round(Math.Max(0, fruit.Produce?.JuiceMillilitres ?? 0) * Scale), [.. cuts.Select(cut =>
        {
            if (cut is null)
                return new FruitCut(2, 1, false);
            var perPiece = Conversion.PiecesPerWhole(fruit, cut);
            var known = fruit.Produce?.Cuts.FirstOrDefault(candidate => candidate.Cut == cut && candidate.PerPiece > 0);
            return new FruitCut(perPiece, perPiece / 2, known?.SparesJuice ?? cut == Measures.Unit.Twist);
        })])
        { Names = cuts };
    }

    private static IEnumerable<Use> UsesOf(Need need, int place, Buying? buying, FruitShape? shape)
    {
        if (shape is null)
        {
            var amount = buying is null || need.Ingredient is null ? 0 : need.Quantities.Sum(quantity => Conversion.To(buying.Kind, quantity, need.Ingredient) ?? 0);
            // What is only wanted at hand takes a pack too.
            yield return new(place, 0, Math.Max(1, Thousandths(amount)));
            yield break;
        }

        foreach (var quantity in need.Quantities.Where(quantity => quantity.Amount > 0))
        {
            if (quantity.Kind is QuantityKind.Millilitres)
                yield return new(place, 0, Thousandths(quantity.Amount));
            else if (quantity.Kind is QuantityKind.Pieces)
                yield return new(place, 2 + shape.Names.ToList().IndexOf(quantity.Cut), Thousandths(quantity.Cut is null ? 2 * quantity.Amount : quantity.Amount));
        }

        if (need.Shells > 0)
            yield return new(place, 1, Thousandths(need.Shells));
    }

    private static long Thousandths(double amount) => (long)Math.Round(Math.Min(Math.Max(0, amount), 1e9) * Scale);
}
