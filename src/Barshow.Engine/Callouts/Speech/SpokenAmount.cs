using Barshow.Engine.Findings;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Callouts.Speech;

/// <summary>An amount as it was said, before it is known what it belongs to.</summary>
internal sealed class SpokenAmount
{
    /// <summary>Where it was said, both sides and what stands between.</summary>
    public required TextPlace Place { get; set; }

    /// <summary>Its first word, and the one after its last.</summary>
    public required int From { get; set; }

    public required int To { get; set; }

    /// <summary>Where the words end that were said before a second side that stands apart: "two ounces of gin, that's sixty mil".</summary>
    public int FirstTo { get; set; }

    public Measure? Ounces { get; set; }

    public Measure? Metric { get; set; }

    public Measure? Counted { get; set; }

    public bool Mention { get; set; }

    public bool Retracted { get; set; }

    /// <summary>A correction that takes back what was said of the same line before, however long ago.</summary>
    public bool CorrectsEarlier { get; set; }

    /// <summary>Named as what was said before, in order to correct it: "I said half an ounce".</summary>
    public bool QuotesEarlier { get; set; }

    /// <summary>Said of each of several things.</summary>
    public bool IsEach { get; set; }

    public bool HasVolume => Ounces is not null || Metric is not null;

    /// <summary>The volume to compare with a spec, in millilitres: the metric side, else the ounces; null for a count.</summary>
    public double? Millilitres(Convention convention) =>
        (Metric ?? Ounces)?.InMillilitres(convention)?.ToDouble();
}
