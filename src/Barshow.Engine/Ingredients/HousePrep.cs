using Barshow.Engine.Measures;
using Barshow.Engine.Names;

namespace Barshow.Engine.Ingredients;

/// <summary>How an ingredient is made from others: a syrup, a brine, an infusion, a pre-mixed juice.</summary>
public sealed record HousePrep
{
    /// <summary>What goes in for one batch.</summary>
    public required IReadOnlyList<PrepInput> Inputs { get; init; }

    /// <summary>What one batch gives, a volume; null when it is computed from the solution's density.</summary>
    public Measure? Yield { get; init; }

    /// <summary>What is done, step by step, in whole sentences.</summary>
    public IReadOnlyList<string> Steps { get; init; } = [];

    /// <summary>How long hands are busy with one batch.</summary>
    public TimeSpan HandsOn { get; init; } = TimeSpan.FromMinutes(10);

    /// <summary>The equipment that only one task can use at a time: "blender"; empty for none.</summary>
    public string Equipment { get; init; } = "";

    /// <summary>How it is stored: "chilled, in a clean closed bottle"; empty when nothing was said.</summary>
    public string Storage { get; init; } = "";
}

/// <summary>One input of a batch.</summary>
/// <param name="Ingredient">Which ingredient.</param>
/// <param name="Amount">How much for one batch; a volume, a mass or a count.</param>
/// <param name="Note">How it is cut or treated.</param>
public sealed record PrepInput(Slug Ingredient, Measure Amount, string? Note = null);
