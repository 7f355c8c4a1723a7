using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Ingredients.Preps;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Planning.Demand;

/// <summary>Counts what an episode needs of every ingredient.</summary>
/// <remarks>
/// The shoot's demand is each line times (takes + tasted swap-outs + rehearsals), with the house's spill on everything that is poured or weighed.
/// Things that are counted are not spilt. The viewer's demand is each drink once. Swap-outs nobody tastes take garnish only.
/// </remarks>
public sealed class DemandPlanner
{
    private const int DeepestPrep = 12;
    private readonly Episode _episode;
    private readonly Bar _bar;
    private readonly DemandFor _for;
    private readonly Dictionary<Slug, (string Name, Ingredient? Ingredient, List<DemandPart> Parts)> _ingredients = [];
    private readonly Dictionary<Slug, (Ingredient Prep, double Yield, List<DemandPart> Parts)> _preps = [];
    private readonly List<Slug> _order = [];
    private readonly List<Slug> _prepOrder = [];
    private readonly List<Finding> _findings = [];
    private readonly HashSet<(string, string)> _said = [];

    private DemandPlanner(Episode episode, Bar bar, DemandFor demandFor)
    {
        _episode = episode;
        _bar = bar;
        _for = demandFor;
    }

    /// <summary>The demand of an episode.</summary>
    public static DemandList Of(Episode episode, Bar bar, DemandFor demandFor)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(bar);
        var planner = new DemandPlanner(episode, bar, demandFor);
        foreach (var drink in episode.Lineup)
            planner.Count(drink);
        return planner.Result();
    }

    private DemandList Result() => new(
        _for,
        [.. _order.Select(slug => new IngredientDemand { Slug = slug, Name = _ingredients[slug].Name, Ingredient = _ingredients[slug].Ingredient, Parts = _ingredients[slug].Parts })],
        [.. _prepOrder.Select(slug => new PrepDemand(_preps[slug].Prep, _preps[slug].Parts.Sum(part => part.Amount.Amount), _preps[slug].Yield, _preps[slug].Parts))],
        _findings);

    private void Count(LineupDrink drink)
    {
        var makings = Makings.Of(drink, _episode, _bar.House, _for);
        if (_for is DemandFor.Shoot && drink.UntastedSwapOuts > 0 && _episode.Sponsor.IsSponsored)
            Say(PlanningFindings.UntastedBesideSponsor(drink));
        var parts = new AmountReader(_episode.Convention, _bar, drink.Spec);
        foreach (var line in drink.Spec.Lines)
        {
            var ingredient = Known(line.Ingredient, line.Name);
            var read = parts.Read(line, ingredient);
            foreach (var finding in read.Findings)
                Say(finding);
            if (read.Amount is not { } each)
                continue;
            Add(drink, read.Ingredient ?? ingredient, line.Name, each, makings.Real,
                new(default, "", default, default) { Optional = line.Optional, Muddled = line.Use is LineUse.Muddled });
        }

        if (drink.Spec.Garnish is { } garnish)
            foreach (var piece in garnish.Beside.Prepend(garnish))
                Garnish(drink, piece, makings);
    }

    private void Garnish(LineupDrink drink, Garnish garnish, Makings makings)
    {
        var (ingredient, each) = GarnishReader.Read(garnish, _bar, _episode.Convention);
        if (ingredient is null)
        {
            Say(PlanningFindings.GarnishNotCounted(drink, garnish));
            return;
        }

        Add(drink, ingredient, ingredient.Name, each, makings.Dressed,
            new(default, "", default, default) { Garnish = true, FromLeftovers = garnish.FromLeftovers });
    }

    private void Add(LineupDrink drink, Ingredient? ingredient, string name, Quantity each, int times, DemandPart manner)
    {
        var spill = _for is DemandFor.Shoot && each.Kind is not QuantityKind.Pieces ? 1 + Math.Max(0, _bar.House.SpillShare) : 1;
        Add(ingredient, name, manner with { Drink = drink.Spec.Slug, DrinkName = drink.Name, Each = each, Amount = each.Times(times * spill) }, []);
    }

    private void Add(Ingredient? ingredient, string name, DemandPart part, IReadOnlyList<Slug> path)
    {
        if (ingredient?.Prep is { } prep && !(part.Amount.Kind is QuantityKind.Pieces && part.Amount.Amount > 0))
        {
            AddPrep(ingredient, prep, part, path);
            return;
        }

        var slug = ingredient?.Slug ?? Slug.Of(name);
        if (!_ingredients.TryGetValue(slug, out var entry))
        {
            if (ingredient is null)
                Say(PlanningFindings.IngredientUnknown(name, part.DrinkName));
            _ingredients[slug] = entry = (ingredient?.Name ?? name, ingredient, []);
            _order.Add(slug);
        }

        entry.Parts.Add(part);
    }

    private void AddPrep(Ingredient ingredient, HousePrep prep, DemandPart part, IReadOnlyList<Slug> path)
    {
        if (path.Contains(ingredient.Slug) || path.Count > DeepestPrep)
        {
            Say(PlanningFindings.PrepInItself(ingredient));
            return;
        }

        var yield = HousePrepYield.Of(ingredient, _bar.Ingredients, _episode.Convention, _bar.House.BarSizes).Millilitres;
        if (yield is not > 0)
        {
            Say(PlanningFindings.PrepYieldUnknown(ingredient));
            return;
        }

        var poured = part with { Amount = AsMillilitres(part.Amount, ingredient), Each = AsMillilitres(part.Each, ingredient) };
        if (!_preps.TryGetValue(ingredient.Slug, out var entry))
        {
            _preps[ingredient.Slug] = entry = (ingredient, yield.Value, []);
            _prepOrder.Add(ingredient.Slug);
        }

        entry.Parts.Add(poured);
        // What is only wanted at hand takes a whole batch, once.
        var first = entry.Parts.Count == 1;
        var batches = poured.Amount.Amount > 0 ? poured.Amount.Amount / yield.Value : first ? 1 : 0;
        var batchesEach = poured.Amount.Amount > 0 ? poured.Each.Amount / yield.Value : batches;
        foreach (var input in prep.Inputs)
        {
            var inner = Known(input.Ingredient, input.Ingredient.Text);
            var each = AmountReader.Plain(input.Amount, inner, _episode.Convention, _bar.House.BarSizes, input.Note, _bar.Ingredients);
            if (each.Amount is not { } amount)
                continue;
            Add(each.Ingredient ?? inner, input.Ingredient.Text, part with { Amount = amount.Times(batches), Each = amount.Times(batchesEach), Through = ingredient.Name, Garnish = false },
                [.. path, ingredient.Slug]);
        }
    }

    private static Quantity AsMillilitres(Quantity amount, Ingredient ingredient) => amount.Kind is QuantityKind.Grams
        ? Quantity.Millilitres(amount.Amount / (ingredient.Composition.DensityGramsPerMillilitre is > 0 and var density ? density : 1))
        : Quantity.Millilitres(amount.Amount);

    private Ingredient? Known(Slug slug, string name) => slug.IsEmpty ? _bar.Ingredients.Named(name) : _bar.Ingredients[slug];

    private void Say(Finding finding)
    {
        if (_said.Add((finding.Kind.Name, finding.Message)))
            _findings.Add(finding);
    }
}
