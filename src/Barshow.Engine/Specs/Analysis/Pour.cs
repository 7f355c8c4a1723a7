using Barshow.Engine.Measures;

namespace Barshow.Engine.Specs.Analysis;

/// <summary>A drink as it is poured, for any guess of dilution and ice between the ends of their ranges.</summary>
internal sealed class Pour(Spec spec, Glass? glass, Mixture tin, Mixture floated, Mixture statedTop, Mixture openTop)
{
    // Built in its glass, the ice that dilutes is the ice that displaces.
    private readonly bool _meltsInGlass = spec.Method?.Kind is MethodKind.Built or MethodKind.MuddledAndBuilt or MethodKind.Swizzled;

    // Poured with all its ice, a blended drink holds none besides.
    private readonly IceKind _ice = spec.Method?.Kind is MethodKind.Blended ? IceKind.None : spec.Serve.Ice;

    private double Wanted => spec.Serve.WashLine ?? glass?.UsualWashLine ?? 0;

    private double WashLineMillilitres => Wanted * (glass?.BrimfulMillilitres ?? 0);

    /// <summary>Grams of ice that usually go into the glass.</summary>
    public Interval UsualIceGrams => glass is null ? Interval.At(0) : IceFill.UsualGrams(_ice, WashLineMillilitres);

    /// <summary>The drink at the four ends of dilution and ice.</summary>
    public IReadOnlyList<Poured> Corners(Interval dilution) =>
    [
        At(dilution.Low, UsualIceGrams.Low), At(dilution.Low, UsualIceGrams.High),
        At(dilution.High, UsualIceGrams.Low), At(dilution.High, UsualIceGrams.High),
    ];

    /// <summary>The drink at one dilution with so much ice.</summary>
    public Poured At(double dilution, double iceGrams)
    {
        var water = tin.Millilitres * dilution;
        var state = GlassState.Of(tin.Millilitres + floated.Millilitres, water, iceGrams, _meltsInGlass);
        var room = WashLineMillilitres - state.Filled;
        var open = openTop * Math.Max(0, room - statedTop.Millilitres);
        var served = tin + Mixture.Water(water) + floated + statedTop + open;
        return new(water, statedTop.Millilitres + open.Millilitres, served, state, room);
    }

    /// <summary>How full that glass is over all corners.</summary>
    public WashLine WashLineOf(Glass named, IReadOnlyList<Poured> corners, double middleWater)
    {
        double? stated = statedTop.Millilitres > 0 ? statedTop.Millilitres : null;
        // Ice that melts in the glass takes the same room as ice and as water, so only water from another tin is counted beside it.
        var roomForIce = WashLineMillilitres - tin.Millilitres - floated.Millilitres - statedTop.Millilitres - (_meltsInGlass ? 0 : middleWater);
        double? iceToTheLine = _ice is IceKind.None || roomForIce < 0 ? null : roomForIce;
        return new()
        {
            Glass = named,
            Wanted = Wanted,
            IceGrams = UsualIceGrams,
            IceMillilitres = DrinkAnalyser.Over(corners, each => each.State.IceLeft),
            LiquidMillilitres = DrinkAnalyser.Over(corners, each => each.Served.Millilitres),
            Level = DrinkAnalyser.Over(corners, each => each.Filled / named.BrimfulMillilitres),
            RoomForTopMillilitres = DrinkAnalyser.Over(corners, each => each.Room),
            IceGramsToTheLine = iceToTheLine,
            StatedTopMillilitres = stated,
            StatedTopFits = stated is null ? null : (corners[0].Filled + corners[2].Filled) / 2 <= named.BrimfulMillilitres,
            IceGramsForStatedTop = stated is null ? null : iceToTheLine,
        };
    }
}

/// <summary>A drink at one dilution with so much ice.</summary>
/// <param name="Water">Millilitres of water from ice.</param>
/// <param name="Topped">Millilitres topped up.</param>
/// <param name="Served">The liquid in the glass.</param>
/// <param name="State">The glass before the top-up.</param>
/// <param name="Room">Millilitres below the wanted line before the top-up.</param>
internal readonly record struct Poured(double Water, double Topped, Mixture Served, GlassState State, double Room)
{
    /// <summary>Millilitres that the liquid and the ice below its line take.</summary>
    public double Filled => Served.Millilitres + State.IceLeft;
}
