using Barshow.Engine.Findings;
using Barshow.Engine.Measures.Writing;

namespace Barshow.Engine.Measures.Jiggers;

/// <summary>How an amount is poured with the jiggers at hand.</summary>
/// <param name="Wanted">The amount that was asked for.</param>
/// <param name="Pours">The pours, largest first; empty when nothing can be poured.</param>
/// <param name="Millilitres">What the pours make, exactly.</param>
/// <param name="Off">What they make more (above nought) or less than was wanted, in millilitres.</param>
/// <param name="Findings">A finding when the pours miss the amount by more than the tolerance.</param>
public sealed record JiggerPlan(Measure Wanted, IReadOnlyList<Pour> Pours, Rational Millilitres, Rational Off, IReadOnlyList<Finding> Findings)
{
    /// <summary>How many pours there are.</summary>
    public int Count => Pours.Sum(pour => pour.Times);

    /// <summary>Whether the pours reach the amount within the smaller of 1 ml and 3 %.</summary>
    public bool Reaches => Findings.Count == 0;

    /// <summary>The pours in a few words: "2 × 1½ oz, ½ oz".</summary>
    public string Show() => string.Join(", ", Pours.Select(pour =>
        pour.Times == 1 ? MeasureWriter.Show(pour.Mark.Amount) : $"{pour.Times}\u00A0×\u00A0{MeasureWriter.Show(pour.Mark.Amount)}"));
}
