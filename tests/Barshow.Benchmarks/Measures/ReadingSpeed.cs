using System.Diagnostics;
using System.Globalization;
using Barshow.Engine.Measures.Reading;

namespace Barshow.Benchmarks.Measures;

/// <summary>Lines read a second on one core over a mixed corpus, and what is allocated for each.</summary>
internal static class ReadingSpeed
{
    private const int Rounds = 4000;
    private const int Repeats = 5;

    // What lists of ingredients are made of: mostly plain lines, some dual, spoken, trailing, open and mistyped ones.
    private static readonly string[] Corpus =
    [
        "2 oz white rum", "1 1/2 oz lime juice", "¾ oz simple syrup", "60 ml white rum", "22.5 ml lime juice, freshly pressed", "2 dashes aromatic bitters",
        "8 mint leaves", "1 egg white", "0.75 oz honey syrup", "1½ oz (45 ml) overproof rum", "¾ oz / 22.5 ml fresh lime juice", "top with soda water",
        "1 barspoon maraschino liqueur", "2-3 dashes orange bitters", "6 cl gin", "1 tsp caster sugar", "juice of half a lime", "soda water, to top",
        "White rum: 2 oz", "lime juice - 3/4 oz", "½ oz 151-proof rum", "one and a half ounces of gin", "three quarters of an ounce lime juice",
        "forty-five mil white rum", "an ounce and a half of rum", "pinch of salt", "absinthe rinse", "1 large egg white (optional)", "2 ouncs white rum",
        "I½ oz gin", "1 (330 ml) can cola", "mint sprig for garnish", "salt to taste", "- 2 oz white rum, chilled", "4 oz pineapple juice",
        "½ lime, cut into wedges", "1 oz coconut cream", "15 ml dark rum (float)", "3 drops saline solution (20%)", "lime wheel, to garnish",
    ];

    /// <summary>Prints the best of several runs.</summary>
    public static void Print(TextWriter output)
    {
        var lines = Rounds * Corpus.Length;
        Run();
        var best = TimeSpan.MaxValue;
        long allocated = 0;
        for (var repeat = 0; repeat < Repeats; repeat++)
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            var watch = Stopwatch.StartNew();
            Run();
            watch.Stop();
            allocated = GC.GetAllocatedBytesForCurrentThread() - before;
            best = watch.Elapsed < best ? watch.Elapsed : best;
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{lines / best.TotalSeconds / 1e6:0.00} million lines a second on one core, {allocated / (double)lines:0} bytes allocated a line ({lines:N0} lines, best of {Repeats})"));
    }

    private static void Run()
    {
        for (var round = 0; round < Rounds; round++)
        {
            foreach (var line in Corpus)
                LineReader.Read(line);
        }
    }
}
