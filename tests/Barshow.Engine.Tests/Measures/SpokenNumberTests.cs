using System.Globalization;
using Barshow.Engine.Measures;
using Barshow.Engine.Measures.Reading;
using Barshow.Engine.Measures.Writing;
using Humanizer;

namespace Barshow.Engine.Tests.Measures;

/// <summary>Spoken numbers against an outside library (Humanizer, English), both ways.</summary>
public class SpokenNumberTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en");

    [Fact]
    public void Every_number_from_0_to_10000_is_said_as_Humanizer_says_it() =>
        Assert.All(Enumerable.Range(0, 10_001), number => Assert.Equal(number.ToWords(English), SpokenNumber.Whole(number)));

    [Fact]
    public void Every_number_from_1_to_10000_is_read_from_the_words_of_Humanizer() =>
        Assert.All(Enumerable.Range(1, 10_000), number =>
            Assert.Equal(Measure.Millilitres(number), LineReader.Read($"{number.ToWords(English)} ml water").Measure));

    [Fact]
    public void Every_number_from_1_to_10000_is_read_without_its_hyphens_and_its_and() =>
        Assert.All(Enumerable.Range(1, 10_000), number =>
            Assert.Equal(Measure.Millilitres(number), LineReader.Read($"{number.ToWords(English).Replace('-', ' ').Replace(" and ", " ", StringComparison.Ordinal)} ml water").Measure));

    [Theory]
    [InlineData(1_000_000, "one million")]
    [InlineData(1_000_001, "one million and one")]
    [InlineData(21_000_105, "twenty-one million one hundred and five")]
    [InlineData(999_999_999_999_999, "nine hundred and ninety-nine trillion nine hundred and ninety-nine billion nine hundred and ninety-nine million nine hundred and ninety-nine thousand nine hundred and ninety-nine")]
    public void Greater_numbers_are_said_too(long number, string said) => Assert.Equal(said, SpokenNumber.Whole(number));

    [Theory]
    [InlineData(-1)]
    [InlineData(1_000_000_000_000_000)]
    public void A_number_out_of_range_is_refused(long number) => Assert.Throws<ArgumentOutOfRangeException>(() => SpokenNumber.Whole(number));
}
