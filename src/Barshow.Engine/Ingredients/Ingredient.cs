using Barshow.Engine.Measures;
using Barshow.Engine.Names;

namespace Barshow.Engine.Ingredients;

/// <summary>Anything poured, dashed, squeezed, muddled, cracked, rimmed or garnished with, named by kind and never by brand.</summary>
public sealed record Ingredient
{
    /// <summary>The name it is kept under.</summary>
    public required Slug Slug { get; init; }

    /// <summary>The name that is shown: "White rum".</summary>
    public required string Name { get; init; }

    /// <summary>Other names that mean the same.</summary>
    public IReadOnlyList<string> Aliases { get; init; } = [];

    /// <summary>What it is at the bar.</summary>
    public required IngredientKind Kind { get; init; }

    /// <summary>What is in it.</summary>
    public Composition Composition { get; init; } = new();

    /// <summary>Allergens it holds or may hold.</summary>
    public IReadOnlyList<AllergenEntry> Allergens { get; init; } = [];

    /// <summary>What can hurt beyond alcohol and allergens.</summary>
    public IReadOnlyList<Hazard> Hazards { get; init; } = [];

    /// <summary>Whether a home is assumed to have it: sugar, salt, water, ice.</summary>
    public bool Staple { get; init; }

    /// <summary>Whether it holds gas and so is opened at the shot and never shaken.</summary>
    public bool Fizzy { get; init; }

    /// <summary>What one whole piece gives, for fruit, herbs and eggs.</summary>
    public Produce? Produce { get; init; }

    /// <summary>How it is bought, smallest first.</summary>
    public IReadOnlyList<Pack> Packs { get; init; } = [];

    /// <summary>What is in the house already.</summary>
    public Measure? OnHand { get; init; }

    /// <summary>The day on which what is in the house was opened; null when it is closed or nobody noted it.</summary>
    public DateOnly? OpenedOn { get; init; }

    /// <summary>How it came into the house.</summary>
    public Supply Supply { get; init; }

    /// <summary>What viewers must be told of a gift or a sponsor, as it is to be printed; empty for none.</summary>
    public string Disclosure { get; init; } = "";

    /// <summary>How it is made, for a house prep.</summary>
    public HousePrep? Prep { get; init; }

    /// <summary>How long it keeps once made, pressed or opened; null when it keeps.</summary>
    public FreshWindow? Fresh { get; init; }

    /// <summary>What will do instead, best first.</summary>
    public IReadOnlyList<StandIn> StandIns { get; init; } = [];

    /// <summary>What must not be used instead.</summary>
    public IReadOnlyList<NotInstead> NotInstead { get; init; } = [];

    /// <summary>What it is called elsewhere.</summary>
    public IReadOnlyList<RegionalName> RegionalNames { get; init; } = [];

    /// <summary>What viewers keep asking.</summary>
    public IReadOnlyList<ViewerQuestion> Questions { get; init; } = [];

    /// <summary>The size of one dash from its own bottle, in millilitres; null for the house's.</summary>
    public Rational? DashMillilitres { get; init; }

    /// <summary>The class of ingredient that kinship is judged by: "rum", "citrus", "sweetener"; empty when it is its own class.</summary>
    public string Class { get; init; } = "";
}
