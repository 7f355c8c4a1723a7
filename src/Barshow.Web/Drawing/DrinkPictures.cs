using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Analysis;

namespace Barshow.Web.Drawing;

/// <summary>How a drink looks, from its spec and its analysis.</summary>
public static class DrinkPictures
{
    private static readonly string[] FoamMakers = ["egg white", "aquafaba", "egg"];

    /// <summary>The picture of a drink as it is served.</summary>
    public static GlassPicture Of(Spec spec, DrinkAnalysis analysis, BarKit kit)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(analysis);
        ArgumentNullException.ThrowIfNull(kit);
        var glass = analysis.WashLine?.Glass;
        if (glass is null)
            kit.TryGetGlass(spec.Serve.Glass, out glass);
        return new()
        {
            Glass = glass,
            LiquidMillilitres = analysis.ServedMillilitres.Middle,
            DisplacedMillilitres = analysis.WashLine?.IceMillilitres.Middle ?? 0,
            Ice = spec.Serve.Ice,
            Tint = LiquidColour.Of(analysis.Lines.Select(line => (line.Line.Name, line.IsOpenTop ? analysis.ToppedMillilitres.Middle : line.Millilitres))),
            Foam = spec.Lines.Any(line => Array.Exists(FoamMakers, maker => line.Name.Contains(maker, StringComparison.OrdinalIgnoreCase))),
            Leaves = spec.Method?.Kind == MethodKind.MuddledAndBuilt && analysis.Lines.Any(line => line.Place == LinePlace.Outside || line.Ingredient?.Kind == Engine.Ingredients.IngredientKind.Herb),
            Bubbles = analysis.Lines.Any(line => line.Ingredient?.Fizzy == true),
            Rimmed = spec.Lines.Any(line => line.Use == LineUse.Rimmed),
            Garnish = spec.Garnish?.Text ?? "",
            Seed = spec.Slug.Text.Aggregate(7, (seed, letter) => (seed * 31 + letter) % 9973),
        };
    }
}
