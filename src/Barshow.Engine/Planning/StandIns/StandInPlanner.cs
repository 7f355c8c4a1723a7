using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Ingredients.Preps;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Analysis;

namespace Barshow.Engine.Planning.StandIns;

/// <summary>Swaps an ingredient across a lineup and keeps every drink as sweet and as sour as it was.</summary>
/// <remarks>
/// The stand-in is poured so that it brings what the ingredient was there for: its acid where it is sour, else its sugar where it is sweet, else the ratio
/// of the stand-in. What that changes of the drink's sugar and acid is made up by its other sweet and sour lines. Amounts are rounded to 2.5 ml.
/// </remarks>
public sealed class StandInPlanner
{
    private static readonly Rational Step = new(5, 2);
    private readonly Episode _episode;
    private readonly Bar _bar;
    private readonly Ingredient _from;
    private readonly Ingredient _to;
    private readonly AnalysisSetting _setting;

    private StandInPlanner(Episode episode, Bar bar, Ingredient from, Ingredient to)
    {
        (_episode, _bar, _from, _to) = (episode, bar, from, to);
        _setting = new(bar.Ingredients, bar.Kit) { Convention = episode.Convention, Sizes = bar.House.BarSizes };
    }

    /// <summary>The lineup with one ingredient swapped for another.</summary>
    /// <exception cref="ArgumentException">The house knows one of the two ingredients not.</exception>
    public static StandInSwap Swap(Episode episode, Bar bar, Slug from, Slug to)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(bar);
        var known = bar.Ingredients[from] ?? throw new ArgumentException($"The house has no ingredient \"{from}\".", nameof(from));
        var other = bar.Ingredients[to] ?? throw new ArgumentException($"The house has no ingredient \"{to}\".", nameof(to));
        return new StandInPlanner(episode, bar, known, other).Swapped();
    }

    private StandInSwap Swapped()
    {
        var drinks = _episode.Lineup.Where(drink => drink.Spec.Lines.Any(line => line.Ingredient == _from.Slug)).Select(Rebalance).ToList();
        var unknown = new[] { _from, _to }.Where(ingredient => ContentOf(ingredient) is { SugarGramsPer100Millilitres: null } or { AcidGramsPer100Millilitres: null });
        return new(_from, _to, drinks, drinks.Count == 0 ? [] : [.. unknown.Select(PlanningFindings.StandInNotBalanced)]);
    }

    private RebalancedDrink Rebalance(LineupDrink drink)
    {
        var before = DrinkAnalyser.Analyse(drink.Spec, _setting);
        var after = drink.Spec with { Lines = [.. drink.Spec.Lines.Select(line => line.Ingredient == _from.Slug ? Replace(line) : line)] };
        after = MakeUp(after, before.SugarGrams - DrinkAnalyser.Analyse(after, _setting).SugarGrams, content => content.SugarGramsPer100Millilitres ?? 0, 30, "sweet");
        after = MakeUp(after, before.AcidGrams - DrinkAnalyser.Analyse(after, _setting).AcidGrams, content => content.AcidGramsPer100Millilitres ?? 0, 2, "sour");
        var now = DrinkAnalyser.Analyse(after, _setting);
        double[] bends = [Bend(before.SugarGrams, now.SugarGrams, 1), Bend(before.AcidGrams, now.AcidGrams, 0.1), Bend(before.EthanolMillilitres, now.EthanolMillilitres, 1)];
        return new(drink.Spec.Slug, drink.Name, drink.Spec, after, bends.Max());
    }

    private SpecLine Replace(SpecLine line)
    {
        var swapped = line with { Ingredient = _to.Slug, Name = _to.Name };
        return line.Planned?.InMillilitres(_episode.Convention, _bar.House.BarSizes) is { } millilitres
            ? With(swapped, millilitres.ToDouble() * Ratio, $"{_to.Name} stands in for {_from.Name}")
            : swapped;
    }

    // How much of the stand-in brings what one millilitre brought.
    private double Ratio
    {
        get
        {
            var (from, to) = (ContentOf(_from), ContentOf(_to));
            if (from.AcidGramsPer100Millilitres > 1 && to.AcidGramsPer100Millilitres > 1)
                return from.AcidGramsPer100Millilitres.Value / to.AcidGramsPer100Millilitres.Value;
            if (from.SugarGramsPer100Millilitres > 10 && to.SugarGramsPer100Millilitres > 10)
                return from.SugarGramsPer100Millilitres.Value / to.SugarGramsPer100Millilitres.Value;
            return _from.StandIns.FirstOrDefault(standIn => standIn.Ingredient == _to.Slug) is { Ratio: > 0 } stated ? stated.Ratio : 1;
        }
    }

    // The strongest other line of a kind gives or takes what is missing; a change too small to pour is left.
    private Spec MakeUp(Spec spec, double missingGrams, Func<Composition, double> content, double least, string kept)
    {
        var strongest = spec.Lines.Index()
            .Where(line => line.Item.Ingredient != _to.Slug && line.Item.Planned?.InMillilitres(_episode.Convention, _bar.House.BarSizes) is not null)
            .Select(line => (line.Index, line.Item, PerMillilitre: _bar.Ingredients[line.Item.Ingredient] is { } ingredient ? content(ContentOf(ingredient)) / 100 : 0))
            .Where(line => line.PerMillilitre * 100 >= least)
            .OrderByDescending(line => line.PerMillilitre * line.Item.Planned!.MillilitresNear(_episode.Convention, _bar.House.BarSizes)!.Value)
            .FirstOrDefault();
        if (strongest.PerMillilitre <= 0)
            return spec;
        var now = strongest.Item.Planned!.MillilitresNear(_episode.Convention, _bar.House.BarSizes)!.Value;
        var changed = With(strongest.Item, now + missingGrams / strongest.PerMillilitre, $"keeps the drink as {kept} with {_to.Name}");
        return spec with { Lines = [.. spec.Lines.Select((line, index) => index == strongest.Index ? changed : line)] };
    }

    private SpecLine With(SpecLine line, double millilitres, string reason)
    {
        var rounded = Rational.FromDecimal((decimal)Math.Round(Math.Clamp(millilitres, 0, 100_000), 2)).RoundTo(Step);
        var before = line.Planned!.InMillilitres(_episode.Convention, _bar.House.BarSizes)!.Value;
        return rounded == before ? line : line.With(AmountLayer.Episode, Measure.Of(rounded.Sign > 0 ? rounded : Step, Unit.Millilitre), reason) with { WrittenBeside = null };
    }

    private Composition ContentOf(Ingredient ingredient) => ingredient.Prep is null
        ? ingredient.Composition
        : HousePrepYield.Of(ingredient, _bar.Ingredients, _episode.Convention, _bar.House.BarSizes).Composition;

    private static double Bend(double before, double now, double least) => Math.Abs(now - before) / Math.Max(before, least) * 100;
}
