namespace Barshow.Engine.Specs.Analysis;

/// <summary>The room in one glass under one guess of dilution and ice.</summary>
/// <param name="Liquid">Millilitres of liquid before any top-up, water from ice with it.</param>
/// <param name="IceLeft">Millilitres the ice takes below the line.</param>
internal readonly record struct GlassState(double Liquid, double IceLeft)
{
    /// <summary>The state of a glass.</summary>
    /// <param name="undiluted">Millilitres in the glass without water from ice and without a top-up.</param>
    /// <param name="water">Millilitres of water from ice.</param>
    /// <param name="iceGrams">Grams of ice that went into the glass.</param>
    /// <param name="meltsInGlass">Whether the water came from that very ice, as in a built drink: what has melted displaces no longer.</param>
    public static GlassState Of(double undiluted, double water, double iceGrams, bool meltsInGlass) =>
        new(undiluted + water, IceFill.DisplacedMillilitres(Math.Max(0, meltsInGlass ? iceGrams - water : iceGrams)));

    public double Filled => Liquid + IceLeft;
}
