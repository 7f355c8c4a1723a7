using Barshow.Engine.Measures;
using Barshow.Engine.Measures.Reading;
using Barshow.Engine.Measures.Writing;
using CsCheck;

namespace Barshow.Engine.Tests.Measures;

/// <summary>Whatever the writer writes, the reader reads back.</summary>
public class WritingAndReadingBackTests
{
    private const string Name = "lime juice";

    [Fact]
    public void A_shown_measure_reads_back_as_itself() =>
        MeasureGenerators.Any.Sample(measure => ReadsBack(measure, MeasureWriter.Show(measure)), iter: 20_000);

    [Fact]
    public void A_plain_measure_reads_back_as_itself() =>
        MeasureGenerators.Any.Sample(measure => ReadsBack(measure, MeasureWriter.Plain(measure)), iter: 20_000);

    [Fact]
    public void A_spoken_measure_reads_back_as_itself() =>
        MeasureGenerators.Any.Sample(measure => ReadsBack(measure, MeasureWriter.Say(measure)), iter: 20_000);

    [Fact]
    public void A_plain_measure_is_plain_ASCII() =>
        MeasureGenerators.Any.Sample(measure => Assert.All(MeasureWriter.Plain(measure), c => Assert.InRange(c, ' ', '~')));

    [Fact]
    public void The_canonical_text_parses_back_to_the_same_measure() =>
        MeasureGenerators.Any.Sample(measure => Assert.Equal(measure, Measure.Parse(measure.ToString())));

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_callout_reads_back_as_both_its_sides_in_either_order(bool ouncesFirst) =>
        Gen.Select(MeasureGenerators.Amount, Gen.OneOf(Unit.Ounce, Unit.Millilitre, Unit.Centilitre), Gen.OneOf(Enum.GetValues<Convention>()))
            .Sample((amount, unit, convention) =>
            {
                var callout = Callout.Of(Measure.Of(amount, unit), convention);
                var (first, second) = ouncesFirst ? (callout.Ounces, callout.Millilitres) : (callout.Millilitres, callout.Ounces);

                foreach (var text in new[] { callout.Show(ouncesFirst), callout.Plain(ouncesFirst), callout.Say(ouncesFirst) })
                {
                    var read = LineReader.Read($"{text} {Name}");

                    Assert.Equal((first, second, Name), (read.Measure, read.Second, read.Name));
                }
            });

    [Theory]
    [InlineData("top with 75 ml")]
    [InlineData("fill with 4 oz")]
    [InlineData("float 1/2 oz")]
    [InlineData("rinse with 5 ml")]
    public void An_open_measure_with_an_amount_reads_back(string plain)
    {
        var measure = LineReader.Read($"{plain} {Name}").Measure!;

        Assert.Equal(plain, MeasureWriter.Plain(measure));
        Assert.Equal(measure, LineReader.Read($"{MeasureWriter.Show(measure)} {Name}").Measure);
        Assert.Equal(measure, LineReader.Read($"{MeasureWriter.Say(measure)} {Name}").Measure);
    }

    [Fact]
    public void An_open_measure_without_an_amount_reads_back()
    {
        foreach (var open in Enum.GetValues<OpenMeasure>())
        {
            var measure = Measure.LeftOpen(open);

            Assert.Equal(measure, LineReader.Read($"{Name}, {MeasureWriter.Show(measure)}").Measure);
            Assert.Equal(measure, Measure.Parse(measure.ToString()));
        }
    }

    private static void ReadsBack(Measure measure, string text)
    {
        var read = LineReader.Read($"{text} {Name}");

        Assert.True(measure == read.Measure && read.Name == Name, $"{measure} was written \"{text}\" and read as {read.Measure} of \"{read.Name}\".");
    }
}
