namespace Barshow.Engine.Measures;

/// <summary>An amount that a spec leaves to the hand.</summary>
public enum OpenMeasure
{
    /// <summary>Topped up, by habit to the wash line.</summary>
    Top,

    /// <summary>Filled.</summary>
    Fill,

    /// <summary>The glass is coated and the rest thrown out.</summary>
    Rinse,

    /// <summary>Poured last, to lie on the drink.</summary>
    Float,

    /// <summary>A splash.</summary>
    Splash,

    /// <summary>A squeeze.</summary>
    Squeeze,

    /// <summary>A crack of the mill.</summary>
    Crack,

    /// <summary>To taste.</summary>
    ToTaste,
}
