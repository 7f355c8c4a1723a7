using Barshow.Engine.Measures;

namespace Barshow.Engine.Ingredients;

/// <summary>How an ingredient is bought.</summary>
/// <param name="Name">As the shelf has it: "700 ml bottle", "bunch", "one".</param>
/// <param name="Holds">What is in it; an amount with a unit of volume, mass or count.</param>
/// <param name="Price">What it costs in the house's currency; null when it is not known.</param>
public sealed record Pack(string Name, Measure Holds, decimal? Price = null);
