using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;
using Barshow.Engine.Planning.Demand;

namespace Barshow.Engine.Planning.Citrus;

/// <summary>The fruit plans of a whole demand.</summary>
/// <param name="Plans">One for each fruit, in the order in which the lineup first asks for it.</param>
/// <param name="Findings">What the plans have to say.</param>
public sealed record FruitPlans(IReadOnlyList<FruitPlan> Plans, IReadOnlyList<Finding> Findings)
{
    /// <summary>The plan for one fruit; null when the lineup needs none of it.</summary>
    public FruitPlan? this[Slug fruit] => Plans.FirstOrDefault(plan => plan.Fruit.Slug == fruit);

    /// <summary>Plans every fruit that the demand asks juice, peel or pieces of.</summary>
    public static FruitPlans Of(DemandList demand, IngredientShelf shelf)
    {
        ArgumentNullException.ThrowIfNull(demand);
        ArgumentNullException.ThrowIfNull(shelf);
        var needs = new List<(Ingredient Fruit, List<DemandPart> Parts)>();
        foreach (var need in demand.Ingredients)
        {
            if (FruitBehind(need.Ingredient, shelf) is not { } fruit)
                continue;
            var index = needs.FindIndex(entry => entry.Fruit.Slug == fruit.Slug);
            if (index < 0)
                needs.Add((fruit, [.. need.Parts]));
            else
                needs[index].Parts.AddRange(need.Parts);
        }

        var plans = needs.Select(entry => FruitPlanner.Plan(entry.Fruit, NeedOf(entry.Parts)) with { Parts = entry.Parts }).Where(plan => plan.Whole > 0).ToList();
        return new(plans, [.. plans.SelectMany(plan => plan.Findings)]);
    }

    /// <summary>The fruit that an ingredient is, or that its juice is pressed from; null when it is bought in another way.</summary>
    public static Ingredient? FruitBehind(Ingredient? ingredient, IngredientShelf shelf) => ingredient switch
    {
        null => null,
        { Kind: IngredientKind.Fruit } => ingredient,
        _ when Pressing.IsPressed(ingredient, shelf) => Pressing.FruitOf(ingredient, shelf),
        _ => null,
    };

    private static FruitNeed NeedOf(IEnumerable<DemandPart> parts)
    {
        var (juice, shells) = (0.0, 0.0);
        var cuts = new Dictionary<CutKey, double>();
        foreach (var part in parts)
        {
            if (part.FromLeftovers)
                shells += part.Amount.Kind is QuantityKind.Pieces ? part.Amount.Amount : 0;
            else if (part.Amount.Kind is QuantityKind.Millilitres)
                juice += part.Amount.Amount;
            else if (part.Amount.Kind is QuantityKind.Pieces)
                cuts[new(part.Amount.Cut)] = cuts.GetValueOrDefault(new(part.Amount.Cut)) + part.Amount.Amount;
        }

        return new(juice, cuts, (int)Math.Clamp(Math.Ceiling(shells - Quantity.Least), 0, 1_000_000));
    }
}
