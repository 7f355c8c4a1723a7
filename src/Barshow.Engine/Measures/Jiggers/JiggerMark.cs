namespace Barshow.Engine.Measures.Jiggers;

/// <summary>One amount that a jigger shows.</summary>
/// <param name="Jigger">What the jigger is called at the bench.</param>
/// <param name="Amount">The amount, a volume above nought.</param>
public sealed record JiggerMark(string Jigger, Measure Amount);

/// <summary>One mark, poured a number of times.</summary>
/// <param name="Mark">The mark.</param>
/// <param name="Times">How often, 1 or more.</param>
public sealed record Pour(JiggerMark Mark, int Times);
