namespace Barshow.Engine.Ingredients;

/// <summary>What can hurt beyond alcohol and allergens; each has a usual caution.</summary>
public enum Hazard
{
    /// <summary>Raw or lightly cooked egg.</summary>
    RawEgg,

    /// <summary>Grapefruit and its kin change how some medicines work.</summary>
    Grapefruit,

    /// <summary>Quinine.</summary>
    Quinine,

    /// <summary>Honey, never for a child under twelve months.</summary>
    Honey,

    /// <summary>Flame.</summary>
    Flame,

    /// <summary>Dry ice.</summary>
    DryIce,

    /// <summary>Garlic, herbs or vegetables kept in oil.</summary>
    InfusedOil,

    /// <summary>Chilli on hands and in eyes.</summary>
    Chilli,

    /// <summary>Unpasteurised juice.</summary>
    FreshJuice,

    /// <summary>Milk, cream and other food that must be kept cold.</summary>
    KeepCold,

    /// <summary>A spirit of 50 % and more, which lights without warming.</summary>
    OverproofSpirit,

    /// <summary>Activated charcoal binds medicines.</summary>
    Charcoal,

    /// <summary>Caffeine with alcohol.</summary>
    Caffeine,
}
