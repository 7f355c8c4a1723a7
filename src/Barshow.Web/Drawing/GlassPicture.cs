using Barshow.Engine.Specs;

namespace Barshow.Web.Drawing;

/// <summary>What a drawn drink looks like: its glass, how much stands in it, and what stands on it.</summary>
public sealed record GlassPicture
{
    /// <summary>The glass; null draws a plain tumbler.</summary>
    public Glass? Glass { get; init; }

    /// <summary>Liquid as served, in millilitres; 0 draws an empty glass.</summary>
    public double LiquidMillilitres { get; init; }

    /// <summary>What the ice in the glass displaces, in millilitres.</summary>
    public double DisplacedMillilitres { get; init; }

    /// <summary>The ice in the glass.</summary>
    public IceKind Ice { get; init; }

    /// <summary>The colour of the liquid, as CSS writes it.</summary>
    public string Tint { get; init; } = "#E6E7CF";

    /// <summary>Whether a foam stands on it.</summary>
    public bool Foam { get; init; }

    /// <summary>Whether herbs were muddled in it.</summary>
    public bool Leaves { get; init; }

    /// <summary>Whether it was topped with something fizzy.</summary>
    public bool Bubbles { get; init; }

    /// <summary>Whether it has a rim of salt, sugar or spice.</summary>
    public bool Rimmed { get; init; }

    /// <summary>The garnish as it is printed; empty for none.</summary>
    public string Garnish { get; init; } = "";

    /// <summary>Fixes how the ice lies, so that one drink is drawn alike everywhere.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>How much more there is than the glass holds, in millilitres; 0 when it fits.</summary>
    public double OverflowMillilitres => Math.Max(0, LiquidMillilitres + DisplacedMillilitres - BrimfulMillilitres);

    /// <summary>What the glass holds, in millilitres.</summary>
    public double BrimfulMillilitres => Glass?.BrimfulMillilitres ?? 300;
}
