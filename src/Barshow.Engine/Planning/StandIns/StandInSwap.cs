using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Planning.StandIns;

/// <summary>An ingredient swapped for another across a lineup, every spec re-balanced.</summary>
/// <param name="From">What is replaced.</param>
/// <param name="To">What stands in.</param>
/// <param name="Drinks">The drinks it touches, in lineup order.</param>
/// <param name="Findings">What could not be balanced.</param>
public sealed record StandInSwap(Ingredient From, Ingredient To, IReadOnlyList<RebalancedDrink> Drinks, IReadOnlyList<Finding> Findings);

/// <summary>A drink with a stand-in.</summary>
/// <param name="Drink">The drink.</param>
/// <param name="Name">Its name.</param>
/// <param name="Before">The spec as it was.</param>
/// <param name="After">The spec with the stand-in, its changed amounts in the episode's layer with their reason.</param>
/// <param name="BendPercent">By how much sweetness, acid and alcohol of the drink still differ after rounding to what can be poured: the largest of the three, in percent of what they were.</param>
public sealed record RebalancedDrink(Slug Drink, string Name, Spec Before, Spec After, double BendPercent);
