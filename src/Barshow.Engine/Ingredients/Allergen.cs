namespace Barshow.Engine.Ingredients;

/// <summary>Classes of allergen that one of the three lists names (EU 1169/2011 Annex II; US FD&amp;C Act 201(qq); Australia and New Zealand Standard 1.2.3).</summary>
public enum Allergen
{
    /// <summary>Wheat, rye, barley, oats and their hybrids.</summary>
    Gluten,

    /// <summary>Crustaceans.</summary>
    Crustaceans,

    /// <summary>Eggs.</summary>
    Eggs,

    /// <summary>Fish.</summary>
    Fish,

    /// <summary>Peanuts.</summary>
    Peanuts,

    /// <summary>Soybeans.</summary>
    Soybeans,

    /// <summary>Milk.</summary>
    Milk,

    /// <summary>Tree nuts.</summary>
    Nuts,

    /// <summary>Celery (EU).</summary>
    Celery,

    /// <summary>Mustard (EU).</summary>
    Mustard,

    /// <summary>Sesame.</summary>
    Sesame,

    /// <summary>Sulphur dioxide and sulphites above 10 mg/kg or 10 mg/l.</summary>
    Sulphites,

    /// <summary>Lupin.</summary>
    Lupin,

    /// <summary>Molluscs.</summary>
    Molluscs,
}

/// <summary>How sure one is of an allergen. Nothing is ever said to be free from one.</summary>
public enum AllergenPresence
{
    /// <summary>It is in there.</summary>
    Contains,

    /// <summary>It depends on the brand: read the label.</summary>
    CheckLabel,
}

/// <summary>An allergen in an ingredient.</summary>
/// <param name="Allergen">The class.</param>
/// <param name="Presence">How sure one is.</param>
/// <param name="From">What it comes from, to be named beside the class: "almond".</param>
public sealed record AllergenEntry(Allergen Allergen, AllergenPresence Presence, string? From = null);
