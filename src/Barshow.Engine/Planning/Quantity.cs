using System.Globalization;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Planning;

/// <summary>What a quantity counts in.</summary>
public enum QuantityKind
{
    /// <summary>Millilitres.</summary>
    Millilitres,

    /// <summary>Grams.</summary>
    Grams,

    /// <summary>Pieces of a cut, or whole pieces.</summary>
    Pieces,
}

/// <summary>How much is needed, bought or left, after every conversion.</summary>
/// <param name="Amount">Millilitres, grams or pieces, 0 or more.</param>
/// <param name="Kind">Which of the three.</param>
/// <param name="Cut">The cut for pieces ("wedge", "leaf"); null for whole pieces.</param>
public readonly record struct Quantity(double Amount, QuantityKind Kind, Unit? Cut = null)
{
    /// <summary>Nothing less than this is told from nought: a thousandth of a millilitre, gram or piece.</summary>
    internal const double Least = 1e-3;

    /// <summary>A product of two fractions, however large: rounded once, where the exact product need not fit.</summary>
    internal static double Product(Rational left, Rational right) => (double)left.Numerator * right.Numerator / ((double)left.Denominator * right.Denominator);

    /// <summary>Millilitres.</summary>
    public static Quantity Millilitres(double amount) => new(amount, QuantityKind.Millilitres);

    /// <summary>Grams.</summary>
    public static Quantity Grams(double amount) => new(amount, QuantityKind.Grams);

    /// <summary>Pieces of a cut; null for whole pieces.</summary>
    public static Quantity Pieces(double amount, Unit? cut = null) => new(amount, QuantityKind.Pieces, cut);

    /// <summary>The same thing a number of times over.</summary>
    public Quantity Times(double factor) => this with { Amount = Amount * factor };

    /// <summary>Whether two quantities count the same thing and may be added.</summary>
    public bool Like(Quantity other) => Kind == other.Kind && Cut == other.Cut;

    /// <summary>As a list shows it: "540 ml", "1.5 kg", "12 leaves", "3".</summary>
    public override string ToString() => Kind switch
    {
        QuantityKind.Millilitres => Number(Amount) + " ml",
        QuantityKind.Grams => Amount >= 1000 ? Number(Amount / 1000, "#,0.##") + " kg" : Number(Amount) + " g",
        _ when Cut is { } cut => Number(Amount) + " " + (Math.Abs(Amount - 1) < Least ? cut.Spoken : cut.SpokenMany),
        _ => Number(Amount),
    };

    private static string Number(double amount, string? format = null) =>
        amount.ToString(format ?? (amount >= 100 ? "#,0" : "#,0.#"), CultureInfo.InvariantCulture);
}
