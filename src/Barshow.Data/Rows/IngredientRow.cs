using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;

namespace Barshow.Data.Rows;

/// <summary>A saved ingredient.</summary>
public sealed class IngredientRow : Row<Ingredient>
{
    /// <summary>Its name, other names and names elsewhere, folded, one a line.</summary>
    public string Folded { get; private set; } = "";

    /// <summary>What it is at the bar.</summary>
    public IngredientKind Kind { get; private set; }

    /// <summary>The class that kinship is judged by; empty when it is its own.</summary>
    public string Class { get; private set; } = "";

    /// <summary>Strength in percent; null when it is not known.</summary>
    public double? StrengthPercent { get; private set; }

    /// <summary>Whether it is made in the house.</summary>
    public bool IsPrep { get; private set; }

    /// <summary>Whether a home is assumed to have it.</summary>
    public bool Staple { get; private set; }

    /// <summary>Whether some of it is in the house.</summary>
    public bool OnHand { get; private set; }

    /// <inheritdoc/>
    public override string SlugOf(Ingredient document) => document.Slug.Text;

    /// <inheritdoc/>
    protected override string NameOf(Ingredient document) => document.Name;

    /// <inheritdoc/>
    protected override void Describe(Ingredient document)
    {
        Folded = string.Join('\n', document.Aliases.Prepend(document.Name).Concat(document.RegionalNames.Select(regional => regional.Name)).Select(NameFolding.Fold).Distinct());
        Kind = document.Kind;
        Class = document.Class;
        StrengthPercent = document.Composition.Strength?.Percent;
        IsPrep = document.Prep is not null;
        Staple = document.Staple;
        OnHand = document.OnHand?.Middle is { } amount && amount > 0;
    }
}
