using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Data.Library;

/// <summary>What the list of drinks is narrowed to; each part that is left as it is narrows nothing.</summary>
public sealed record DrinkQuery
{
    /// <summary>A name or a part of one, with or without accents, well spelled or nearly.</summary>
    public string Text { get; init; } = "";

    /// <summary>The base: a class of ingredient ("rum") or the ingredient's slug.</summary>
    public string Base { get; init; } = "";

    /// <summary>The family.</summary>
    public string Family { get; init; } = "";

    /// <summary>The method.</summary>
    public MethodKind? Method { get; init; }

    /// <summary>The glass.</summary>
    public Slug Glass { get; init; }

    /// <summary>A flavour tag.</summary>
    public string Tag { get; init; } = "";

    /// <summary>An ingredient that must be in it.</summary>
    public Slug Ingredient { get; init; }

    /// <summary>The least strength as served, in percent.</summary>
    public double? StrengthFrom { get; init; }

    /// <summary>The greatest strength as served, in percent.</summary>
    public double? StrengthTo { get; init; }

    /// <summary>Only drinks that were never featured, or not on that day or after it.</summary>
    public DateOnly? NotFeaturedSince { get; init; }

    /// <summary>Only drinks of which everything is on hand or a staple.</summary>
    public bool OnHandOnly { get; init; }
}
