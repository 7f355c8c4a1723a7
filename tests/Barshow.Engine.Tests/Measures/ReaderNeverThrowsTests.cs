using System.Buffers;
using System.Text;
using System.Text.Json;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures;
using Barshow.Engine.Measures.Reading;
using Barshow.Engine.Tests.Support;
using CsCheck;

namespace Barshow.Engine.Tests.Measures;

/// <summary>Whatever a line holds, it is read, and what is given back makes sense.</summary>
public class ReaderNeverThrowsTests
{
    private const int Ordinary = 20_000;
    private const int Long = 1_000_000;

    // Pieces that mean something to the reader, and pieces that trip readers up.
    private static readonly string[] Pieces =
    [
        "1", "2", "0", "12", "330", "45", "22.5", "1/2", "1 1/2", "½", "¾", "⅓", "⅟", "¹", "⁄", "₂", "↉", "٣", "１", ".", ",", "-", "–", "−", "/", "//", "(", ")", "[", "]",
        "{", "}", "·", "•", "|", "=", "~", "x", "×", "%", ":", ";", "'", "’", "\"", "*", "+", "&", "&amp;", "<b>", "\0", "\t", "\r", "\n", "\u00A0", "\u202F", "\u2064", "\uFEFF",
        "\uD83C", "\uDF4B", "🍋", "é", "e\u0301", "oz", "oz.", "fl.", "fl oz", "ml", "mil", "cl", "l", "I", "O", "Z", "S", "0z", "m1", "tsp", "T", "t", "bsp", "bar spoon",
        "dash", "dashes", "drops", "parts", "splash", "leaf", "leaves", "sprig", "wedge", "can", "inch", "piece", "an", "a", "one", "two", "twenty", "hundred", "thousand",
        "million", "half", "quarters", "third", "dozen", "couple", "few", "and", "or", "to", "of", "the", "in", "point", "over", "about", "between", "up", "scant", "heaped",
        "top", "fill", "rinse", "float", "to taste", "to top", "juice", "zest", "white", "egg", "lime juice", "white rum", "151-proof rum", "12 year old", "40%", "2:1",
        "freshly", "optional", "(optional)", "if you like", "for garnish", "plus", "with", "from", "each", "by weight", "99999999999", "9999999", "0.0000000001",
        "1.33333333333333333333", "1,000", "1,000,000", "1.2.3", "1/0", "-5", "ouncs", "twelvety", "garnish:", "US", "imperial", "metric",
    ];

    private static readonly Gen<string> FromPieces =
        Gen.Select(Gen.OneOf(Pieces), Gen.OneOf("", " ", "  ", "-")).Select((piece, gap) => piece + gap).Array[0, 14].Select(string.Concat);

    private static readonly Gen<string> AnyText = Gen.Char.Array[0, 40].Select(chars => new string(chars));

    private static readonly Gen<string> Inputs = Gen.Frequency((6, FromPieces), (1, AnyText), (1, Gen.Select(FromPieces, AnyText, FromPieces).Select((a, b, c) => a + b + c)));

    [Fact]
    public void Twenty_thousand_made_up_lines_are_read() => Inputs.Sample(IsRead, iter: Ordinary);

    [LongFact]
    public void A_million_made_up_lines_are_read() => Inputs.Sample(IsRead, iter: Long);

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("\0")]
    [InlineData("\uD800")]
    [InlineData("½½½½½")]
    [InlineData("((((((((((")]
    [InlineData("))))]]]]")]
    [InlineData("- - - -")]
    [InlineData("/////")]
    [InlineData("1/1/1/1/1/1/1/1/1/1/1/1/1/1/1/1/1/1/1/1/1/1")]
    [InlineData("9999999999999999999999999999999999999999 oz 9999999999999999999999999")]
    [InlineData("9999999 9999/9999 US oz gin")]
    [InlineData("nine million nine hundred thousand over nine thousand ounces of gin")]
    public void Lines_that_break_readers_are_read(string line) => IsRead(line);

    private static void IsRead(string line)
    {
        var read = LineReader.Read(line);

        Assert.Equal(line, read.Text);
        foreach (var place in new[] { read.MeasurePlace, read.SecondPlace, read.NamePlace }.Concat(read.Findings.Select(finding => finding.Place)).OfType<TextPlace>())
            Assert.True(place.Start >= 0 && place.Length >= 0 && place.End <= line.Length, $"A place lies outside \"{line}\".");
        foreach (var measure in new[] { read.Measure, read.Second }.OfType<Measure>())
            Assert.Equal(measure, Measure.Parse(measure.ToString()));
        Assert.DoesNotContain(read.Findings, finding => finding.Kind == FindingCatalogue.AmountImpossible && read.Measure?.Low == Rational.Zero);
        IsJson(read);
        _ = MeasureFinder.Find(line);
    }

    private static void IsJson(ReadLine read)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(buffer, FindingJson.OneLine))
            ReadLineJson.Write(writer, read, 1);
        var text = Encoding.UTF8.GetString(buffer.WrittenSpan);
        using var parsed = JsonDocument.Parse(text);

        Assert.DoesNotContain('\n', text);
        Assert.Equal(9, parsed.RootElement.EnumerateObject().Count());
    }
}
