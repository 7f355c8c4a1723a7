using Barshow.Engine.Measures;

namespace Barshow.Engine.Specs.Analysis;

/// <summary>How much ice usually goes into a glass, and what it displaces.</summary>
/// <remarks>Floating ice displaces its own weight of liquid, and as it melts it becomes just that water: a gram of ice takes about a millilitre below the line, melted or not.</remarks>
public static class IceFill
{
    /// <summary>Grams in one millilitre of ice at 0 °C (CRC Handbook).</summary>
    public const double GramsPerMillilitre = 0.917;

    /// <summary>The share of its space that ice fills, by kind; nought for none.</summary>
    /// <remarks>Cubes 50 to 60 %: common practice, no source. Crushed 50 to 65 %: common practice between the stowage of flake ice, 47 to 50 %, and of
    /// crushed block ice, 73 to 78 % (FAO Fisheries Technical Paper 331, chapter 12).</remarks>
    public static Interval PackingOf(IceKind kind) => kind switch
    {
        IceKind.None => Interval.At(0),
        IceKind.Cubed => new(0.50, 0.60),
        IceKind.Crushed => new(0.50, 0.65),
        IceKind.Large => Interval.At(1),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such ice."),
    };

    /// <summary>The weight of one piece, in grams; nought where ice is not counted.</summary>
    /// <remarks>A household cube 21.3 g (USDA SR 26, record 14429: three cubes, 64 g). A large piece is a cube of 50 mm, 114.6 g.</remarks>
    public static double PieceGrams(IceKind kind) => kind switch
    {
        IceKind.Cubed => 64d / 3,
        IceKind.Large => 5 * 5 * 5 * GramsPerMillilitre,
        _ => 0,
    };

    /// <summary>Grams of ice that usually go in: cubes and crushed ice up to the wash line, one large piece where it fits.</summary>
    /// <param name="kind">The ice.</param>
    /// <param name="washLineMillilitres">The glass up to its wash line, millilitres.</param>
    public static Interval UsualGrams(IceKind kind, double washLineMillilitres)
    {
        if (kind is IceKind.Large)
            return Interval.At(Math.Min(PieceGrams(kind), washLineMillilitres * 0.6 * GramsPerMillilitre));
        var packing = PackingOf(kind);
        return new(packing.Low * washLineMillilitres * GramsPerMillilitre, packing.High * washLineMillilitres * GramsPerMillilitre);
    }

    /// <summary>Millilitres that ice of this weight takes below the line while it floats.</summary>
    public static double DisplacedMillilitres(double grams) => grams;
}
