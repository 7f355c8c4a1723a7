using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;

namespace Barshow.Engine.Planning.Demand;

/// <summary>What an episode needs of every ingredient, house preps taken apart into what they are made of.</summary>
/// <param name="For">Whose need it is.</param>
/// <param name="Ingredients">In the order in which the lineup first asks for them. A juice is counted as juice; what fruit it takes is the fruit plan's to say.</param>
/// <param name="Preps">The house preps on the way, in the same order; their inputs stand among the ingredients.</param>
/// <param name="Findings">What could not be counted and what was assumed.</param>
public sealed record DemandList(
    DemandFor For,
    IReadOnlyList<IngredientDemand> Ingredients,
    IReadOnlyList<PrepDemand> Preps,
    IReadOnlyList<Finding> Findings)
{
    /// <summary>The demand for one ingredient; null when the lineup does not use it.</summary>
    public IngredientDemand? this[Slug slug] => Ingredients.FirstOrDefault(demand => demand.Slug == slug);
}

/// <summary>The demand for one ingredient.</summary>
public sealed record IngredientDemand
{
    /// <summary>The ingredient; for one the house does not know, the slug of its name.</summary>
    public required Slug Slug { get; init; }

    /// <summary>The name that is shown.</summary>
    public required string Name { get; init; }

    /// <summary>The ingredient; null when the house does not know it.</summary>
    public Ingredient? Ingredient { get; init; }

    /// <summary>Which drink needs how much, in lineup order.</summary>
    public required IReadOnlyList<DemandPart> Parts { get; init; }

    /// <summary>Whether some of it is only wanted at hand ("to taste", a rim), so that the smallest pack must be there.</summary>
    public bool WantedAtHand => Parts.Any(part => part.Amount.Amount == 0);

    /// <summary>Millilitres in all.</summary>
    public double Millilitres => Sum(QuantityKind.Millilitres);

    /// <summary>Grams in all.</summary>
    public double Grams => Sum(QuantityKind.Grams);

    /// <summary>The sums, one for each unit it is counted in.</summary>
    public IReadOnlyList<Quantity> Totals =>
        [.. Parts.Where(part => part.Amount.Amount > 0 && !part.FromLeftovers)
            .GroupBy(part => part.Amount with { Amount = 0 })
            .Select(group => group.Key with { Amount = group.Sum(part => part.Amount.Amount) })];

    /// <summary>The drinks that need it, in lineup order.</summary>
    public IReadOnlyList<Slug> Drinks => [.. Parts.Select(part => part.Drink).Distinct()];

    private double Sum(QuantityKind kind) => Parts.Where(part => part.Amount.Kind == kind).Sum(part => part.Amount.Amount);
}

/// <summary>What one line or garnish of one drink asks of an ingredient.</summary>
/// <param name="Drink">The drink's slug.</param>
/// <param name="DrinkName">Its name.</param>
/// <param name="Amount">All makings and spill together; an amount of 0 means that it is only wanted at hand.</param>
/// <param name="Each">The same for one drink, without spill.</param>
public sealed record DemandPart(Slug Drink, string DrinkName, Quantity Amount, Quantity Each)
{
    /// <summary>The house prep it goes into; null when it goes into the drink as it is.</summary>
    public string? Through { get; init; }

    /// <summary>Whether it is a garnish.</summary>
    public bool Garnish { get; init; }

    /// <summary>Whether a spent shell or a leftover does, so that nothing is bought for it.</summary>
    public bool FromLeftovers { get; init; }

    /// <summary>Whether the drink may go without it.</summary>
    public bool Optional { get; init; }

    /// <summary>Whether it is muddled, so that only a share of its juice is set free.</summary>
    public bool Muddled { get; init; }
}

/// <summary>The demand for a house prep.</summary>
/// <param name="Prep">The ingredient with its prep.</param>
/// <param name="Millilitres">How much of it the drinks and other preps use, 0 when it is only wanted at hand.</param>
/// <param name="YieldMillilitres">What one batch gives.</param>
/// <param name="Parts">Which drink needs how much.</param>
public sealed record PrepDemand(Ingredient Prep, double Millilitres, double YieldMillilitres, IReadOnlyList<DemandPart> Parts)
{
    /// <summary>How many batches that is, not rounded; one where it is only wanted at hand.</summary>
    public double Batches => Millilitres > 0 ? Millilitres / YieldMillilitres : 1;
}
