using System.Xml;
using Barshow.Engine.Publishing.StructuredData;
using CsCheck;

namespace Barshow.Engine.Tests.Publishing;

public class IsoDurationTests
{
    [Theory]
    [InlineData(0, "PT0S")]
    [InlineData(90, "PT1M30S")]
    [InlineData(600, "PT10M")]
    [InlineData(3600, "PT1H")]
    [InlineData(26 * 3600, "P1DT2H")]
    [InlineData(1.5, "PT1.5S")]
    [InlineData(86400, "P1D")]
    public void A_duration_is_written_as_iso_8601_has_it(double seconds, string expected) =>
        Assert.Equal(expected, IsoDuration.Write(TimeSpan.FromSeconds(seconds)));

    [Fact]
    public void Another_reader_reads_the_same_duration_back() =>
        // xsd:duration (W3C XML Schema Part 2, 3.2.6) follows ISO 8601.
        Gen.Int[0, 1_000_000_000].Sample(milliseconds =>
            XmlConvert.ToTimeSpan(IsoDuration.Write(TimeSpan.FromMilliseconds(milliseconds))) == TimeSpan.FromMilliseconds(milliseconds));

    [Fact]
    public void A_duration_below_nought_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => IsoDuration.Write(TimeSpan.FromSeconds(-1)));
}
