using Barshow.Engine.Findings;

namespace Barshow.Engine.Measures.Reading;

/// <summary>What is to be said of a line read on its own, outside any brief: the sides of its amount are compared as those of a callout.</summary>
public static class ReadLineChecks
{
    /// <summary>The same line, with a finding where its two sides are not the same amount under a convention.</summary>
    /// <param name="read">The line as it was read.</param>
    /// <param name="convention">How ounces and millilitres are matched.</param>
    public static ReadLine WithSidesCompared(this ReadLine read, Convention convention)
    {
        ArgumentNullException.ThrowIfNull(read);
        if (read is not { Measure: { } measure, Second: { } second })
            return read;
        var subject = read.Name.Length > 0 ? read.Name : read.Text;
        var disagree = CalloutCheck.Findings(Callout.Of(measure, convention, second), subject).Where(finding => finding.Kind == FindingCatalogue.PairDisagrees).ToList();
        return disagree.Count == 0 || second.Unit?.IsMetric == measure.Unit?.IsMetric ? read : read with { Findings = [.. read.Findings, .. disagree] };
    }
}
