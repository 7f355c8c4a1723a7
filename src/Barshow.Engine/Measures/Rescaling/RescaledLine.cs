namespace Barshow.Engine.Measures.Rescaling;

/// <summary>One line of a rescaled drink.</summary>
/// <param name="From">Millilitres before.</param>
/// <param name="To">Millilitres after, an amount that can be poured and said in both units.</param>
/// <param name="Bend">How far the line strays from the drink's common factor: 0.02 is 2 % more than its share.</param>
public sealed record RescaledLine(Rational From, Rational To, double Bend)
{
    /// <summary>The new amount in both units.</summary>
    public Callout Callout(Convention convention) => Measures.Callout.Of(Measure.Of(To, Unit.Millilitre), convention);
}

/// <summary>One way of rescaling a drink.</summary>
/// <param name="Factor">The common factor: the new drink is about so many times the old one.</param>
/// <param name="LargestBend">The largest bend of any line, without its sign; all lines lie within it.</param>
/// <param name="Lines">The lines, in the order they were given.</param>
public sealed record Rescale(Rational Factor, double LargestBend, IReadOnlyList<RescaledLine> Lines);
