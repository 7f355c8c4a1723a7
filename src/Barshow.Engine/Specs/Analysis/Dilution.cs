using Barshow.Engine.Measures;

namespace Barshow.Engine.Specs.Analysis;

/// <summary>How much water ice adds to what is in the tin.</summary>
/// <param name="Share">Millilitres of water to one millilitre in the tin before ice. Of the starting volume, never of the final.</param>
/// <param name="LowEnd">What the lower end stands for, a sentence.</param>
/// <param name="HighEnd">What the upper end stands for, a sentence.</param>
/// <param name="Published">What the published fit gives; null where none holds.</param>
public sealed record Dilution(Interval Share, string LowEnd, string HighEnd, double? Published = null);
