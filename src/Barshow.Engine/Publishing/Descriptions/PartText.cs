using Barshow.Engine.Episodes;

namespace Barshow.Engine.Publishing.Descriptions;

/// <summary>One part of a description in the forms it may be shortened to.</summary>
/// <param name="Part">Which part.</param>
/// <param name="Full">The whole of it; empty when there is nothing to say.</param>
/// <param name="Short">A shorter form that still serves; null when there is none between the whole and nothing.</param>
/// <param name="ShortLoses">What the shorter form leaves out, as the finding names it: "the steps".</param>
internal sealed record PartText(DescriptionPart Part, string Full, string? Short = null, string ShortLoses = "")
{
    public static PartText OfLines(DescriptionPart part, IEnumerable<string> lines) =>
        new(part, string.Join('\n', lines.Where(line => line.Length > 0)));
}
