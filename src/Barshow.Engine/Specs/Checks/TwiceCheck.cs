using Barshow.Engine.Findings;
using Barshow.Engine.Names;

namespace Barshow.Engine.Specs.Checks;

/// <summary>An ingredient that stands twice among the lines that go in together.</summary>
internal static class TwiceCheck
{
    public static IEnumerable<Finding> Of(CheckedSpec drink)
    {
        // A split pour, some shaken and some floated, is no slip: only the same use counts.
        var seen = new HashSet<(string, LineUse)>();
        foreach (var line in drink.Lines)
        {
            var name = line.Line.Ingredient.IsEmpty ? NameFolding.Fold(line.Line.Name) : line.Line.Ingredient.Text;
            if (name.Length == 0 || seen.Add((name, line.Line.Use)))
                continue;
            yield return drink.About(FindingCatalogue.IngredientTwice, line,
                $"{line.Line.Name} stands twice in {drink.Spec.Name}.",
                "Join the two amounts, or say what each is for.");
        }
    }
}
