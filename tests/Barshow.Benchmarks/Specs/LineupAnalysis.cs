using Barshow.Benchmarks.Planning;
using Barshow.Engine.Planning.Lineup;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Analysis;
using Barshow.Engine.Specs.Checks;
using BenchmarkDotNet.Attributes;

namespace Barshow.Benchmarks.Specs;

/// <summary>The analysis of a lineup of twelve drinks over a house of 600 ingredients, many of unknown composition and with house preps to be reckoned. The aim is under 1 ms.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class LineupAnalysis
{
    private const int DrinkCount = 12;
    private readonly AnalysisSetting _setting;
    private readonly Spec[] _lineup;

    public LineupAnalysis()
    {
        LineupQuestion question = LibraryGenerator.Question(seed: 1, drinks: 200);
        _setting = new(question.Bar.Ingredients, question.Bar.Kit);
        _lineup = [.. question.Catalogue.Take(DrinkCount)];
    }

    /// <summary>Strength, dilution, balance, standard drinks and wash line of every drink.</summary>
    [Benchmark(OperationsPerInvoke = 1)]
    public double Analyse() => _lineup.Sum(drink => DrinkAnalyser.Analyse(drink, _setting).EthanolMillilitres);

    /// <summary>The same with the trade's checks.</summary>
    [Benchmark(OperationsPerInvoke = 1)]
    public double AnalyseAndCheck() => Analyse() + _lineup.Sum(drink => SpecChecker.Check(drink, _setting).Count);
}
