using System.Globalization;
using System.Text;
using Barshow.Engine.Callouts;
using Barshow.Engine.Callouts.Captions;
using Barshow.Engine.Measures;
using BenchmarkDotNet.Attributes;

namespace Barshow.Benchmarks.Callouts;

/// <summary>A caption file of two hours: reading it (aim: under 100 ms), and checking it against a lineup of twelve.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class CaptionReading
{
    private const int Seconds = 7200;
    private const int SecondsToACue = 3;

    private static readonly string[] Lines =
    [
        "So this one is drink number {0}, and it is", "called the Lantern {0}, stay with me.", "One and a half ounces, forty-five mil, of", "white rum, and that's the whole base.", "Three quarters of an ounce of lime juice,", "twenty-two and a half mil.",
        "Half an ounce, fifteen mil, of syrup.", "The old book has two ounces, and I think", "that was a different kind of evening.", "Shake it for twelve seconds, listen to the", "ice, and strain it into the cold glass.", "It tastes of Tuesday, in a good way.",
    ];

    private byte[] _captions = [];
    private FilmSheet _sheet = new();

    /// <summary>Writes the file.</summary>
    [GlobalSetup]
    public void Write()
    {
        var text = new StringBuilder("WEBVTT\n\n");
        for (var second = 0; second < Seconds; second += SecondsToACue)
        {
            var line = second / SecondsToACue;
            text.Append(CultureInfo.InvariantCulture, $"{second / 3600:00}:{second / 60 % 60:00}:{second % 60:00}.000 --> {second / 3600:00}:{second / 60 % 60:00}:{second % 60 + 2:00}.900\n");
            text.AppendFormat(CultureInfo.InvariantCulture, Lines[line % Lines.Length], 1 + line / 200).Append("\n\n");
        }

        _captions = Encoding.UTF8.GetBytes(text.ToString());
        _sheet = new()
        {
            Drinks = [.. Enumerable.Range(1, 12).Select(number => new SheetDrink(string.Create(CultureInfo.InvariantCulture, $"Lantern {number}"),
                [new("white rum", Measure.Ounces(3, 2)), new("lime juice", Measure.Ounces(3, 4)), new("1:1 syrup", Measure.Ounces(1, 2))]))],
        };
    }

    /// <summary>From bytes to cues.</summary>
    [Benchmark]
    public ReadCaptions Read() => CaptionReader.Read(_captions);

    /// <summary>From bytes to findings.</summary>
    [Benchmark]
    public CalloutReport Check() => CalloutChecker.Check(CaptionReader.Read(_captions), _sheet);
}
