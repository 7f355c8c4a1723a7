using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Planning.Citrus;
using Barshow.Engine.Planning.Demand;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Planning.Lineup;

/// <summary>What one drink asks of one thing to buy.</summary>
internal sealed class Need(Slug slug, string name, Ingredient? ingredient, bool isFruit)
{
    public Slug Slug { get; } = slug;

    public string Name { get; } = name;

    public Ingredient? Ingredient { get; } = ingredient;

    public bool IsFruit { get; } = isFruit;

    public List<Quantity> Quantities { get; } = [];

    public double Shells { get; set; }

    /// <summary>The same in the book's whole numbers, once the things are known.</summary>
    public IReadOnlyList<Use> Uses { get; set; } = [];
}

/// <summary>A drink of the catalogue with what it asks for.</summary>
internal sealed record Draft(Spec Spec, bool Swapped, DemandList Demand, IReadOnlyList<Need> Needs, double BottleMillilitres);

/// <summary>Goes through a catalogue once.</summary>
internal sealed class Drafts(LineupQuestion question)
{
    private readonly Dictionary<Slug, Ingredient?> _fruitBehind = [];

    public IReadOnlyList<Draft> All()
    {
        var seen = new HashSet<Slug>();
        return [.. question.Catalogue.Where(spec => spec.Lines.Count > 0 && seen.Add(spec.Slug)).OrderBy(spec => spec.Slug).Select(DraftOf)];
    }

    private Draft DraftOf(Spec spec)
    {
        var bottle = question.Bottle?.Ingredient ?? default;
        var swapped = question.BaseSwaps && !bottle.IsEmpty && BaseSwap.Needed(spec, bottle) ? BaseSwap.Made(spec, bottle, question.Bar.Ingredients) : null;
        var made = swapped ?? spec;
        var demand = DemandPlanner.Of(
            new Episode { Slug = made.Slug, Title = "", Bottle = question.Bottle, Convention = question.Convention, Lineup = [new LineupDrink { Spec = made }] },
            question.Bar,
            DemandFor.Viewer);
        return new(made, swapped is not null, demand, NeedsOf(demand), bottle.IsEmpty ? 0 : demand[bottle]?.Millilitres ?? 0);
    }

    private List<Need> NeedsOf(DemandList demand)
    {
        var needs = new List<Need>();
        foreach (var asked in demand.Ingredients)
        {
            var fruit = FruitBehind(asked.Ingredient);
            // A fruit in grams is bought like anything else.
            if (fruit is not null && asked.Totals.Any(total => total.Kind is QuantityKind.Grams))
                fruit = null;
            if (AtHome(fruit ?? asked.Ingredient) || (fruit is null && asked.Parts.All(part => part.FromLeftovers)))
                continue;
            var slug = fruit?.Slug ?? asked.Slug;
            var need = needs.Find(known => known.Slug == slug);
            if (need is null)
                needs.Add(need = new(slug, fruit?.Name ?? asked.Name, fruit ?? asked.Ingredient, fruit is not null));
            need.Quantities.AddRange(asked.Totals);
            need.Shells += asked.Parts.Where(part => part.FromLeftovers && part.Amount.Kind is QuantityKind.Pieces).Sum(part => part.Amount.Amount);
        }

        return needs;
    }

    private Ingredient? FruitBehind(Ingredient? ingredient)
    {
        if (ingredient is null)
            return null;
        if (!_fruitBehind.TryGetValue(ingredient.Slug, out var fruit))
            _fruitBehind[ingredient.Slug] = fruit = FruitPlans.FruitBehind(ingredient, question.Bar.Ingredients);
        return fruit;
    }

    private static bool AtHome(Ingredient? ingredient) => ingredient is { Staple: true } or { Kind: IngredientKind.Water, Packs.Count: 0 };
}

/// <summary>Pouring the bottle in place of a drink's base.</summary>
internal static class BaseSwap
{
    /// <summary>Whether the drink leaves the bottle out but lets it stand in for its base.</summary>
    public static bool Needed(Spec spec, Slug bottle) => spec.Lines.All(line => line.Ingredient != bottle) && spec.BaseSwaps.Contains(bottle);

    /// <summary>The spec with the bottle in the place of its largest pour of spirit; null when it has none.</summary>
    public static Spec? Made(Spec spec, Slug bottle, IngredientShelf shelf)
    {
        var place = spec.Lines.Index()
            .Where(line => shelf[line.Item.Ingredient]?.Kind is IngredientKind.Spirit)
            .OrderByDescending(line => line.Item.Planned?.MillilitresNear(Convention.Bar) ?? 0)
            .Select(line => (int?)line.Index)
            .FirstOrDefault();
        if (place is not { } at || shelf[bottle] is not { } poured)
            return null;
        return spec with
        {
            Lines = [.. spec.Lines.Select((line, index) => index == at ? line with { Ingredient = bottle, Name = poured.Name } : line)],
            Notes = [.. spec.Notes, $"{poured.Name} in place of {spec.Lines[at].Name}."],
        };
    }
}
