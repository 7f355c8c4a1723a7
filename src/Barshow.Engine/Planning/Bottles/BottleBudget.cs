using Barshow.Engine.Findings;
using Barshow.Engine.Names;

namespace Barshow.Engine.Planning.Bottles;

/// <summary>The two budgets of the featured bottle: what a viewer pours, each drink once, and what the shoot pours.</summary>
public sealed record BottleBudget
{
    /// <summary>The bottle's name; empty when the episode names none.</summary>
    public required string Name { get; init; }

    /// <summary>The ingredient in it.</summary>
    public Slug Ingredient { get; init; }

    /// <summary>Millilitres in the stated bottle; null when its size is missing or nought.</summary>
    public double? BottleMillilitres { get; init; }

    /// <summary>Millilitres a viewer pours, each drink made once.</summary>
    public double ViewerMillilitres { get; init; }

    /// <summary>The viewer's budget against the stated size, 700 ml and 750 ml, each size once.</summary>
    public IReadOnlyList<BottleCheck> Checks { get; init; } = [];

    /// <summary>Whether one stated bottle carries every drink once; null when its size is not known or there is no bottle.</summary>
    public bool? ViewerFits => Checks.FirstOrDefault(check => check.Stated)?.Fits;

    /// <summary>Millilitres the shoot pours: takes, tasted swap-outs, rehearsal and spill.</summary>
    public double ShootMillilitres { get; init; }

    /// <summary>The size the shoot's bottles are counted in: the stated one, else 700 ml.</summary>
    public double ShootBottleMillilitres { get; init; }

    /// <summary>Bottles the shoot pours from, the last perhaps not to its end.</summary>
    public int Bottles { get; init; }

    /// <summary>Bottles to order, what is on hand taken off.</summary>
    public int BottlesToOrder { get; init; }

    /// <summary>The level after each drink, in shoot order; a first entry without a drink stands for rehearsal.</summary>
    public IReadOnlyList<BottleLevel> Levels { get; init; } = [];

    /// <summary>Millilitres left in the last bottle when all is filmed.</summary>
    public double LastBottleMillilitres { get; init; }

    /// <summary>The drink that pours most of it in one making; empty when none does.</summary>
    public Slug CostliestDrink { get; init; }

    /// <summary>Its name.</summary>
    public string CostliestDrinkName { get; init; } = "";

    /// <summary>How many more takes of the costliest drink the last bottle gives, spill counted.</summary>
    public int RetakesLeft { get; init; }

    /// <summary>What the budgets have to say.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];
}

/// <summary>The viewer's budget against one size.</summary>
/// <param name="BottleMillilitres">The size.</param>
/// <param name="Stated">Whether it is the size the episode states.</param>
/// <param name="LeftMillilitres">What is left when each drink was made once; below nought when it does not last.</param>
public sealed record BottleCheck(double BottleMillilitres, bool Stated, double LeftMillilitres)
{
    /// <summary>Whether one bottle carries every drink once.</summary>
    public bool Fits => LeftMillilitres >= -Quantity.Least;
}

/// <summary>The bottle after one drink was filmed.</summary>
/// <param name="Drink">The drink; empty for the rehearsal.</param>
/// <param name="Name">Its name; "Rehearsal".</param>
/// <param name="PouredMillilitres">What its takes and swap-outs pour, spill counted.</param>
/// <param name="Bottle">Which bottle stands open afterwards, counted from 1.</param>
/// <param name="LevelMillilitres">What is left in that bottle.</param>
public sealed record BottleLevel(Slug Drink, string Name, double PouredMillilitres, int Bottle, double LevelMillilitres);
