using Barshow.Engine.Findings;
using Barshow.Engine.Measures.Writing;

namespace Barshow.Engine.Measures.Reading;

/// <content>What the reader has to say.</content>
internal sealed partial class LineGrammar
{
    private const int LongestQuote = 40;

    private void Say(in MeasureRead measure)
    {
        var place = PlaceOf(measure.From, measure.To);
        if (measure.Flaw != Flaw.None)
        {
            Impossible(measure.Flaw, place);
            return;
        }

        if (measure.Measure is not { } read)
            return;
        var shown = MeasureWriter.Show(read);
        if (measure.Repaired)
        {
            Add(FindingCatalogue.ReadingRepaired, place, $"“{Quote(place)}” is read as {shown}.", "Write it so, or say what was meant.", shown);
        }
        else if (measure.Vague)
        {
            Add(FindingCatalogue.ReadingRepaired, place, $"“{Quote(place)}” is read as {shown}.", "Give the number.", shown);
        }

        if (measure.Doubtful)
            Add(FindingCatalogue.AmountDoubtful, place, Doubt(place, read, shown), "Write the amount so that it can be read in one way only.", shown);
        if (measure.OtherUnit is { } other && read.Unit is { } taken)
        {
            Add(FindingCatalogue.UnitAmbiguous, place,
                $"“{Quote(place)}” can be {taken.SpokenMany} or {other.SpokenMany}; it is read as {shown}.",
                $"Write “{taken.Name}” or “{other.Name}”.", shown);
        }
    }

    private string Doubt(TextPlace place, Measure read, string shown)
    {
        if (read.IsRange)
            return $"“{Quote(place)}” runs from the larger to the smaller; it is read as {shown}.";
        var upper = read.Low!.Value.Numerator;
        var meant = new Rational(upper / 10) + new Rational(upper % 10, read.Low.Value.Denominator);
        return $"“{Quote(place)}” is read as {shown}; {MeasureWriter.Show(Measures.Measure.Of(meant, read.Unit))} may be meant.";
    }

    private void Impossible(Flaw flaw, TextPlace place)
    {
        var quote = Quote(place);
        if (flaw == Flaw.Malformed)
        {
            Add(FindingCatalogue.LineUnreadable, place, $"“{quote}” is no amount that can be read.", "Write one number, such as 1½, 1 1/2 or 22.5.");
            return;
        }

        Add(FindingCatalogue.AmountImpossible, place,
            flaw switch
            {
                Flaw.Nought => $"“{quote}” is nothing to pour.",
                Flaw.BelowNought => $"“{quote}” is below nought.",
                Flaw.DividedByNought => $"“{quote}” divides by nought.",
                Flaw.Power => $"“{quote}” is written as a power of ten.",
                _ => $"“{quote}” is more than any vessel at a bar holds.",
            },
            "Write the amount that is poured.");
    }

    private void Unreadable(int from, int unit)
    {
        _flawed = true;
        var place = unit > from ? PlaceOf(from, unit) : PlaceOf(unit, unit + 1);
        Add(FindingCatalogue.LineUnreadable, place,
            unit > from ? $"“{Quote(place)}” is no number, though a unit follows it." : $"No number stands before “{Quote(place)}”.",
            "Write the number in figures or in words.");
    }

    private void NothingNamed(Measure? measure)
    {
        if (measure is not null)
        {
            Add(FindingCatalogue.LineUnreadable, _measurePlace, $"{MeasureWriter.Show(measure)} of what? The line names no ingredient.", "Name the ingredient after the amount.");
            return;
        }

        if (!string.IsNullOrWhiteSpace(run.Text))
            Add(FindingCatalogue.LineUnreadable, null, "The line holds no amount and no ingredient.", "Write an amount and an ingredient, or leave the line out.");
    }

    private string Quote(TextPlace place)
    {
        var text = place.Length <= LongestQuote ? place.Of(run.Text) : string.Concat(run.Text.AsSpan(place.Start, LongestQuote), "…");
        return Respaced(text);
    }

    private void Add(FindingKind kind, TextPlace? place, string message, string remedy, string? expected = null) =>
        (_findings ??= []).Add(new(kind, Respaced(run.Text.Length <= LongestQuote ? run.Text : string.Concat(run.Text.AsSpan(0, LongestQuote), "…")).Trim(), message, remedy)
        {
            Place = place,
            Said = place is { } where ? Quote(where) : null,
            Expected = expected,
        });
}
