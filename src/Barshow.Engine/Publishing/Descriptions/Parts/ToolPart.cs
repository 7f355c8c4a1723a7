using Barshow.Engine.Episodes;
using Barshow.Engine.Measures;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Publishing.Descriptions.Parts;

/// <summary>What the lineup's methods ask for, and what a home has that will do. Common practice, no source.</summary>
internal static class ToolPart
{
    private static readonly (string Tool, string Instead, Func<Spec, bool> Needed)[] Tools =
    [
        ("Jigger", "a tablespoon, ½ oz · 15 ml, and a teaspoon, 5 ml", spec => spec.Lines.Any(line => line.ToPublish is { Unit.Kind: UnitKind.Volume })),
        ("Shaker", "a jar with a tight lid", spec => spec.Method?.Kind is MethodKind.Shaken or MethodKind.MuddledAndShaken),
        ("Mixing glass and long spoon", "a jug and a chopstick", spec => spec.Method?.Kind is MethodKind.Stirred),
        ("Two tins", "two jugs", spec => spec.Method?.Kind is MethodKind.Thrown),
        ("Muddler", "the end of a wooden spoon", spec => spec.Method?.Kind is MethodKind.MuddledAndBuilt or MethodKind.MuddledAndShaken || spec.Lines.Any(line => line.Use is LineUse.Muddled)),
        ("Swizzle stick", "a long spoon turned between the palms", spec => spec.Method?.Kind is MethodKind.Swizzled),
        ("Blender", "crushed ice and a hard shake, less smooth", spec => spec.Method?.Kind is MethodKind.Blended),
        ("Strainer", "the lid of the jar held ajar", spec => spec.Serve.Strain is Straining.Single or Straining.Fine),
        ("Fine sieve", "a tea strainer", spec => spec.Serve.Strain is Straining.Fine),
    ];

    public static PartText Write(Episode episode)
    {
        var needed = Tools.Where(tool => episode.Lineup.Any(drink => tool.Needed(drink.Spec))).ToList();
        return new PartText(DescriptionPart.Tools, string.Join("; ", needed.Select((tool, i) => $"{(i == 0 ? tool.Tool : Casing.Inside(tool.Tool))} (or {tool.Instead})"))) with
        {
            Short = string.Join(", ", needed.Select((tool, i) => i == 0 ? tool.Tool : Casing.Inside(tool.Tool))),
            ShortLoses = "what will do instead",
        };
    }
}
