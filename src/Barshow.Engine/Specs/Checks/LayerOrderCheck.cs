using System.Globalization;
using Barshow.Engine.Findings;

namespace Barshow.Engine.Specs.Checks;

/// <summary>Layers that would sink: each must be lighter than the one it lies on.</summary>
internal static class LayerOrderCheck
{
    public static IEnumerable<Finding> Of(CheckedSpec drink)
    {
        if (drink.Method is not MethodKind.Layered)
            yield break;
        var layers = drink.Lines.Where(line => line.Ingredient?.Composition.DensityGramsPerMillilitre is not null).ToArray();
        foreach (var (below, above) in layers.Zip(layers.Skip(1)))
        {
            var (lower, upper) = (Density(below), Density(above));
            if (upper <= lower)
                continue;
            yield return drink.About(FindingCatalogue.LayerSinks, above,
                string.Create(CultureInfo.InvariantCulture, $"{above.Ingredient!.Name}, {upper:0.00} g/ml, is poured on {below.Ingredient!.Name.ToLowerInvariant()}, {lower:0.00} g/ml, and sinks."),
                "Pour the heaviest first.");
        }
    }

    private static double Density(CheckedLine line) => line.Ingredient!.Composition.DensityGramsPerMillilitre!.Value;
}
