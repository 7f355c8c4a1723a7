using Barshow.Engine.Findings;
using Barshow.Engine.Measures.Writing;

namespace Barshow.Engine.Measures.Reading;

/// <content>Two amounts or two ingredients in one line, and ounces that a weight stands beside.</content>
internal sealed partial class LineGrammar
{
    /// <summary>A second ingredient with its amount has been met; all from there on is a note.</summary>
    private bool _isTwo;

    // "1 oz 2 oz rum": the first is read, the second passed over and named.
    private int AnotherAmount(int i)
    {
        if (run[i].Kind is not (TokenKind.Digits or TokenKind.Vulgar) || _measure?.Unit is null || !IsAmountOfItsOwn(i, out var next, out var measure) || run[next].Kind == TokenKind.End)
            return i;
        Two(i, next, measure);
        return next;
    }

    // "2 oz white rum 60 ml": the other side at the end of the line.
    private int LateSecond(int i)
    {
        if (_second is not null || _measure?.Unit is not { Kind: UnitKind.Volume } || run[i].Kind is not (TokenKind.Digits or TokenKind.Vulgar)
            || !IsAmountOfItsOwn(i, out var next, out var measure) || measure.Unit!.Kind != UnitKind.Volume || measure.Unit.IsMetric == _measure.Unit.IsMetric || run[next].Kind != TokenKind.End)
            return -1;
        TakeSecond(measure);
        return next;
    }

    // "2 oz lime juice 3 oz gin", "2 oz gin + dash bitters", "2 oz gin and 1 oz vermouth".
    private void SayTwo(int i)
    {
        if (_isTwo || _measure?.Unit is null)
            return;
        var isJoined = run[i].Is('+') || run[i].Is('&') || run[i].Has(Role.And | Role.Plus);
        var at = isJoined ? i + 1 : i;
        if (!isJoined && run[at].Kind is not (TokenKind.Digits or TokenKind.Vulgar) || !CanBeginMeasure(at) && run[at].Lexeme?.Unit?.Kind != UnitKind.Bar)
            return;
        if (!IsAmountOfItsOwn(at, out var next, out var measure) || run[next].Kind != TokenKind.Word || Is(run.TextOf(run[next]), "more") || Is(run.TextOf(run[next]), "extra"))
            return;
        _isTwo = true;
        Two(at, next, measure);
    }

    private bool IsAmountOfItsOwn(int i, out int next, out MeasureRead measure)
    {
        next = _amounts.Measure(i, out measure);
        return next > 0 && measure.Measure is not null && measure.Unit is { Kind: UnitKind.Volume or UnitKind.Mass or UnitKind.Bar } && !_amounts.IsNumberInName(next);
    }

    private void Two(int from, int next, in MeasureRead measure) =>
        Add(FindingCatalogue.TwoInOneLine, PlaceOf(from, next),
            $"{MeasureWriter.Show(measure.Measure!)} stands in the same line as {MeasureWriter.Show(_measure!)}; only {MeasureWriter.Show(_measure!)} is read.",
            "Put each ingredient with its amount on a line of its own.", MeasureWriter.Show(_measure!));

    // "2 oz (50 g) sugar": beside a weight the ounce is one of weight.
    private void WeighOunces()
    {
        if (_measure is not { Low: { } low, High: { } high } || _measure.Unit != Unit.Ounce || _second?.Unit?.Kind != UnitKind.Mass || _measurePlace is not { } place)
            return;
        _measure = Measures.Measure.Between(low, high, Unit.WeightOunce);
        Add(FindingCatalogue.UnitAmbiguous, place,
            $"“{Quote(place)}” stands beside {MeasureWriter.Show(_second)}, a weight; it is read as {MeasureWriter.Show(_measure)}.",
            "Write “oz by weight”, or give millilitres beside fluid ounces.", MeasureWriter.Show(_measure));
    }
}
