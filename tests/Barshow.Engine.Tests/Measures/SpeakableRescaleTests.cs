using Barshow.Engine.Measures;
using Barshow.Engine.Measures.Rescaling;
using CsCheck;

namespace Barshow.Engine.Tests.Measures;

/// <summary>A metric drink made speakable as a whole.</summary>
public class SpeakableRescaleTests
{
    private static readonly PourableGrid Grid = PourableGrid.For(Convention.Bar);

    [Fact]
    public void A_drink_that_can_be_said_already_is_left_alone()
    {
        var best = SpeakableRescale.Find([60, new(45, 2), 15], Grid)[0];

        Assert.Equal(Rational.One, best.Factor);
        Assert.Equal(0, best.LargestBend);
    }

    [Fact]
    public void A_drink_in_fifties_and_twenty_fives_is_scaled_without_bending()
    {
        // 50, 25, 25 becomes 45, 22.5, 22.5 or 60, 30, 30: both keep the ratios, and nine tenths is nearer to the drink's own size.
        var options = SpeakableRescale.Find([50, 25, 25], Grid);

        Assert.Equal(new Rational(9, 10), options[0].Factor);
        Assert.Equal(0, options[0].LargestBend);
        Assert.Equal([45, new(45, 2), new(45, 2)], options[0].Lines.Select(line => line.To));
        Assert.Equal("¾ oz · 22.5 ml", options[0].Lines[1].Callout(Convention.Bar).Show().Replace('\u00A0', ' '));
    }

    [Fact]
    public void Ways_that_bend_more_are_offered_only_nearer_to_the_drinks_own_size()
    {
        var options = SpeakableRescale.Find([35, 25, 20, 10], Grid);

        Assert.NotEmpty(options);
        Assert.Equal(options.OrderBy(option => option.LargestBend), options);
        Assert.Equal(options.OrderByDescending(option => Math.Abs(Math.Log(option.Factor.ToDouble()))), options);
    }

    [Fact]
    public void Without_lines_there_is_nothing_to_offer() => Assert.Empty(SpeakableRescale.Find([], Grid));

    [Fact]
    public void A_line_of_nothing_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => SpeakableRescale.Find([30, Rational.Zero], Grid));

    [Theory]
    [InlineData(5, 2, true)]
    [InlineData(5, 1, true)]
    [InlineData(10, 1, true)]
    [InlineData(25, 1, false)]
    [InlineData(35, 1, false)]
    [InlineData(22, 1, false)]
    [InlineData(45, 2, true)]
    public void An_amount_is_speakable_when_it_can_be_poured_and_said_in_both_units(long upper, long lower, bool isSpeakable) =>
        Assert.Equal(isSpeakable, Grid.IsSpeakable(new(upper, lower)));

    [Fact]
    public void Every_line_can_be_poured_and_said_and_bends_no_more_than_is_told() =>
        Lines(1, 6).Sample(lines =>
        {
            foreach (var option in SpeakableRescale.Find(lines, Grid))
            {
                Assert.Equal(lines, option.Lines.Select(line => line.From));
                Assert.All(option.Lines, line => Assert.True(Grid.IsSpeakable(line.To)));
                Assert.All(option.Lines, line => Assert.Equal((line.To / (line.From * option.Factor)).ToDouble() - 1, line.Bend, 1e-12));
                Assert.Equal(option.LargestBend, option.Lines.Max(line => Math.Abs(line.Bend)), 1e-12);
            }
        });

    [Fact]
    public void No_choice_of_amounts_bends_the_drink_less() =>
        Lines(1, 3).Sample(lines =>
        {
            var options = SpeakableRescale.Find(lines, Grid);

            var least = LeastBendOfAll(lines);
            if (options.Count == 0)
                Assert.Null(least);
            else
                Assert.Equal(least!.Value, options[0].LargestBend, 1e-9);
        }, iter: 300);

    private static Gen<Rational[]> Lines(int least, int most) => Gen.Int[2, 24].Array[least, most].Select(steps => steps.Select(step => new Rational(step * 5, 2)).ToArray());

    // Every speakable amount of every line; for each choice the factor midway between the extreme ratios, which no other factor beats.
    private static double? LeastBendOfAll(Rational[] lines)
    {
        double? least = null;
        Choose(0, double.PositiveInfinity, 0);
        return least;

        void Choose(int line, double low, double high)
        {
            if (line == lines.Length)
            {
                var bend = (high - low) / (high + low);
                least = least is { } before && before < bend ? before : bend;
                return;
            }

            for (var amount = Grid.MillilitreStep; amount <= lines[line] * 2; amount += Grid.MillilitreStep)
            {
                if (amount * 2 < lines[line] || !Grid.IsSpeakable(amount))
                    continue;
                var ratio = (amount / lines[line]).ToDouble();
                Choose(line + 1, Math.Min(low, ratio), Math.Max(high, ratio));
            }
        }
    }
}
