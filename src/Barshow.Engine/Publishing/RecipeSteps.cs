using System.Globalization;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Publishing;

/// <summary>One step of making a drink.</summary>
/// <param name="Name">What is done, a word or two: "Shake".</param>
/// <param name="Text">The step, a sentence.</param>
public sealed record RecipeStep(string Name, string Text);

/// <summary>Says in steps how a drink is made: the spec's own steps, else steps made from its lines, method and serve.</summary>
public static class RecipeSteps
{
    /// <summary>The steps in order; at least one where the spec has any line.</summary>
    public static IReadOnlyList<RecipeStep> Of(Spec spec, BarKit kit, LinePrinter printer)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(printer);
        return spec.Steps.Count > 0
            ? [.. spec.Steps.Select((text, i) => new RecipeStep(string.Create(CultureInfo.InvariantCulture, $"Step {i + 1}"), text))]
            : [.. Made(spec, kit, printer)];
    }

    private static IEnumerable<RecipeStep> Made(Spec spec, BarKit kit, LinePrinter printer)
    {
        var glass = spec.Serve.Glass.IsEmpty ? "glass" : ServeWords.Name(spec.Serve.Glass, kit);
        var vessel = Vessel(spec.Method?.Kind, glass);
        if (spec.Serve.Chilled)
            yield return new("Chill", $"Chill the {glass}.");
        if (Lines(LineUse.Rimmed) is { Length: > 0 } rim)
            yield return new("Rim", $"Rim the {glass} with {rim}.");
        if (Lines(LineUse.Rinsed) is { Length: > 0 } rinse)
            yield return new("Rinse", $"{Casing.AtStart(rinse)} in the {glass}; throw out what does not cling.");
        if (Lines(LineUse.Muddled) is { Length: > 0 } muddled)
            yield return new("Muddle", $"Muddle {muddled} in the {vessel}.");
        if (Lines(LineUse.Mixed) is { Length: > 0 } mixed)
            yield return new("Measure", $"Measure into the {vessel}: {mixed}.");
        if (Mix(spec, glass) is { } mix)
            yield return mix;
        if (Pour(spec, glass) is { } pour)
            yield return pour;
        foreach (var line in spec.Lines.Where(line => line.Use is LineUse.Topped))
            yield return new("Top", Sentence(line.ToPublish is null ? "Top with " + printer.Line(line) : printer.Line(line)));
        foreach (var line in spec.Lines.Where(line => line.Use is LineUse.Floated))
            yield return new("Float", Sentence(line.ToPublish is null ? "Float " + printer.Line(line) : printer.Line(line)));
        if (spec.Garnish is { } garnish)
            yield return new("Garnish", Sentence("Garnish: " + garnish.Text));

        string Lines(LineUse use) => string.Join(", ", spec.Lines.Where(line => line.Use == use).Select(printer.Line));
    }

    private static string Vessel(MethodKind? method, string glass) => method switch
    {
        MethodKind.Shaken or MethodKind.MuddledAndShaken => "shaker",
        MethodKind.Stirred => "mixing glass",
        MethodKind.Thrown => "tin",
        MethodKind.Blended => "blender",
        _ => glass,
    };

    private static RecipeStep? Mix(Spec spec, string glass)
    {
        if (spec.Method is not { } method)
            return null;
        var counted = method.Seconds is { } seconds ? string.Create(CultureInfo.InvariantCulture, $" for {seconds} seconds") : "";
        return method.Kind switch
        {
            MethodKind.Shaken or MethodKind.MuddledAndShaken => new("Shake", $"{(method.DryShake ? "Shake without ice, add ice and shake" : "Add ice and shake")}{counted}."),
            MethodKind.Stirred => new("Stir", $"Add ice and stir{counted}."),
            MethodKind.Thrown => new("Throw", string.Create(CultureInfo.InvariantCulture, $"Add ice and pour from tin to tin{(method.Pours is { } pours ? $" {pours} times" : "")}.")),
            MethodKind.Swizzled => new("Swizzle", $"Add crushed ice and swizzle{counted}."),
            MethodKind.Blended => new("Blend", $"Blend with ice{counted}."),
            MethodKind.Layered => new("Layer", "Pour in layers over the back of a spoon, the heaviest first."),
            _ => spec.Serve.Ice is IceKind.None ? null : new("Build", $"Fill the {glass} with {ServeWords.Ice(spec.Serve.Ice)} and stir once."),
        };
    }

    private static RecipeStep? Pour(Spec spec, string glass)
    {
        if (spec.Method?.Kind is null or MethodKind.Built or MethodKind.MuddledAndBuilt or MethodKind.Swizzled or MethodKind.Layered)
            return null;
        var over = ServeWords.Ice(spec.Serve.Ice) is { Length: > 0 } ice ? $" over {ice}" : "";
        return spec.Serve.Strain switch
        {
            Straining.Fine => new("Strain", $"Fine-strain into the {glass}{over}."),
            Straining.Single => new("Strain", $"Strain into the {glass}{over}."),
            Straining.Open => new("Pour", $"Pour with its ice into the {glass}."),
            _ => new("Pour", $"Pour into the {glass}{over}."),
        };
    }

    private static string Sentence(string text) =>
        Casing.AtStart(text).TrimEnd('.') + ".";
}
