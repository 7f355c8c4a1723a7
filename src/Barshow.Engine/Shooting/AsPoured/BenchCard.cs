using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Measures.Writing;
using Barshow.Engine.Names;
using Barshow.Engine.Shooting.Order;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Shooting.AsPoured;

/// <summary>What the bench shows of one drink: everything is worked out beforehand, so that the page needs no server once it is open.</summary>
public sealed record BenchCard
{
    /// <summary>The drink.</summary>
    public required Slug Drink { get; init; }

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Method, glass, ice and garnish in a line.</summary>
    public required string Manner { get; init; }

    /// <summary>How long it is shaken, stirred or blended, in seconds; null where nothing is timed. A hard shake takes 10 to 12 seconds: common practice, no source.</summary>
    public int? TimerSeconds { get; init; }

    /// <summary>The lines, in order.</summary>
    public required IReadOnlyList<BenchLine> Lines { get; init; }

    /// <summary>How many takes are planned.</summary>
    public required int Takes { get; init; }

    /// <summary>When its first take is planned, as the clock says it; empty when no order was made.</summary>
    public string Planned { get; init; } = "";

    /// <summary>Cue cards: notes, stories, what is not to be used instead, the sponsor's points.</summary>
    public IReadOnlyList<string> Cues { get; init; } = [];

    /// <summary>What must be at hand for it: mise that is made or used late.</summary>
    public IReadOnlyList<string> Ready { get; init; } = [];
}

/// <summary>One line as the bench shows it.</summary>
/// <param name="Name">The ingredient.</param>
/// <param name="First">The amount, first unit, big: "1½ oz".</param>
/// <param name="Second">The other unit; empty for a count.</param>
/// <param name="Spoken">As it is said: "one and a half ounces, forty-five mil".</param>
/// <param name="Note">How it is cut or treated, and what it is called elsewhere.</param>
/// <param name="Planned">The planned amount as canonical text; empty when there is none.</param>
/// <param name="Steps">Amounts near it that one tap logs, smallest first.</param>
/// <param name="StandIns">What one tap logs in its place.</param>
public sealed record BenchLine(string Name, string First, string Second, string Spoken, string Note, string Planned, IReadOnlyList<BenchAmount> Steps, IReadOnlyList<BenchStandIn> StandIns);

/// <summary>An amount that one tap logs.</summary>
/// <param name="Text">As it is shown, in both units.</param>
/// <param name="Measure">As it is logged, canonical text.</param>
/// <param name="First">The first unit, big.</param>
/// <param name="Second">The other unit; empty for a count.</param>
public sealed record BenchAmount(string Text, string Measure, string First, string Second);

/// <summary>An ingredient that one tap logs in place of the line's.</summary>
/// <param name="Ingredient">Its slug.</param>
/// <param name="Name">Its name.</param>
public sealed record BenchStandIn(string Ingredient, string Name);

/// <summary>Makes the bench's cards.</summary>
public static class BenchCards
{
    private const int HardShakeSeconds = 12;
    private const int StirSeconds = 30;

    /// <summary>The cards of an episode, in the order in which the drinks are filmed.</summary>
    public static IReadOnlyList<BenchCard> Of(Episode episode, Bar bar, ShootPlan? plan)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(bar);
        var order = plan?.Order.ShootOrder ?? [];
        return [.. episode.Lineup.DistinctBy(drink => drink.Spec.Slug)
            .OrderBy(drink => order.ToList().IndexOf(drink.Spec.Slug) is >= 0 and var place ? place : int.MaxValue)
            .Select(drink => Card(drink, episode, bar, plan))];
    }

    /// <summary>Amounts that an added line can have.</summary>
    public static IReadOnlyList<BenchAmount> AddedAmounts(Episode episode, Bar bar)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(bar);
        return [.. new[]
        {
            Measure.Of(1, Unit.Dash), Measure.Of(2, Unit.Dash), Measure.Of(1, Unit.Barspoon), Measure.Of(1, Unit.Pinch),
            Measure.Ounces(1, 4), Measure.Ounces(1, 2), Measure.Ounces(3, 4), Measure.Ounces(1), Measure.Ounces(3, 2), Measure.Ounces(2),
        }.Select(measure => Amount(measure, episode, bar))];
    }

    private static BenchCard Card(LineupDrink drink, Episode episode, Bar bar, ShootPlan? plan)
    {
        var spec = drink.Spec;
        bar.Kit.TryGetGlass(spec.Serve.Glass, out var glass);
        var take = plan?.Order.Blocks.FirstOrDefault(block => block.Kind is BlockKind.Take && block.Drink == spec.Slug);
        return new()
        {
            Drink = spec.Slug,
            Name = spec.Name,
            Manner = string.Join(", ", new[] { spec.Method?.Name, glass?.Name.ToLowerInvariant(), IceWords(spec.Serve.Ice), spec.Garnish?.Text }.Where(part => !string.IsNullOrEmpty(part))),
            TimerSeconds = spec.Method is { } method ? method.Seconds ?? method.Kind switch
            {
                MethodKind.Shaken or MethodKind.MuddledAndShaken => HardShakeSeconds,
                MethodKind.Stirred => StirSeconds,
                _ => null,
            } : null,
            Lines = [.. spec.Lines.Select(line => Line(line, episode, bar))],
            Takes = episode.TakesOf(drink),
            Planned = take is null ? "" : plan!.Order.Clock.Say(take.Start),
            Cues = [.. spec.Notes, .. spec.Stories.Select(story => story.Sureness is Sureness.Documented ? story.Text : $"{story.Text} ({story.Sureness.ToString().ToLowerInvariant()})"),
                .. spec.NotInstead.Select(never => $"Not {never.What}: {never.Why}"), .. episode.Sponsor.MustSay.Select(point => $"Say: {point}")],
            Ready = [.. (plan?.Order.Fresh ?? []).Where(stretch => stretch.Drinks.Contains(spec.Slug) && stretch.Until <= plan!.Order.Wrap + TimeSpan.FromHours(1)).Select(stretch => $"{stretch.Name} good until {plan!.Order.Clock.Say(stretch.Until)}"),
                .. (plan?.Mise.Tasks ?? []).Where(task => task.Session is Mise.MiseSession.DuringTheShoot && task.For.Contains(spec.Slug)).Select(task => task.Text.TrimEnd('.'))],
        };
    }

    private static string? IceWords(IceKind ice) => ice switch { IceKind.Cubed => "cubes", IceKind.Crushed => "crushed ice", IceKind.Large => "one large piece of ice", _ => null };

    private static BenchLine Line(SpecLine line, Episode episode, Bar bar)
    {
        var ingredient = bar.Ingredients[line.Ingredient];
        var elsewhere = string.Join(", ", ingredient?.RegionalNames
            .Where(regional => NameFolding.Fold(regional.Name) != NameFolding.Fold(line.Name))
            .GroupBy(regional => regional.Name)
            .Select(group => $"{string.Join(" and ", group.Select(regional => regional.Region))}: {group.Key}") ?? []);
        var note = string.Join("; ", new[] { line.Use is LineUse.Mixed ? null : line.Use.ToString().ToLowerInvariant(), line.Note, elsewhere }.Where(part => !string.IsNullOrEmpty(part)));
        IReadOnlyList<BenchStandIn> standIns = [.. (ingredient?.StandIns ?? []).Select(standIn => bar.Ingredients[standIn.Ingredient]).OfType<Ingredient>().Select(other => new BenchStandIn(other.Slug.Text, other.Name))];
        if (line.Planned is not { } planned)
            return new(line.Name, "", "", "", note, "", [], standIns);
        var shown = Amount(planned, episode, bar);
        var callout = Callout.Of(planned, episode.Convention, sizes: bar.House.BarSizes);
        return new(line.Name, shown.First, shown.Second, callout.Say(bar.House.UnitOrder is UnitOrder.OuncesFirst), note, planned.ToString(), [.. Near(planned).Select(near => Amount(near, episode, bar))], standIns);
    }

    private static BenchAmount Amount(Measure measure, Episode episode, Bar bar)
    {
        var ouncesFirst = bar.House.UnitOrder is UnitOrder.OuncesFirst;
        var callout = Callout.Of(measure, episode.Convention, sizes: bar.House.BarSizes);
        if (callout is not { Ounces: { } ounces, Millilitres: { } millilitres })
            return new(MeasureWriter.Show(measure), measure.ToString(), MeasureWriter.Show(measure), "");
        var (first, second) = ouncesFirst ? (ounces, millilitres) : (millilitres, ounces);
        return new(callout.Show(ouncesFirst), measure.ToString(), MeasureWriter.Show(first), MeasureWriter.Show(second));
    }

    /// <summary>Up to three steps either way: quarters of an ounce, 2.5, 5 and 10 ml, or single pieces.</summary>
    private static IEnumerable<Measure> Near(Measure planned)
    {
        if (planned.Middle is not { } middle)
            yield break;
        Rational[] steps = planned.Unit == Unit.Ounce ? [new(1, 4), new(1, 2), 1]
            : planned.Unit == Unit.Millilitre ? [new(5, 2), 5, 10]
            : planned.Unit?.Kind is UnitKind.Volume ? [new(1, 4), new(1, 2), 1]
            : [1, 2, 3];
        foreach (var step in steps.Select(step => -step).Reverse().Concat(steps))
            if ((middle + step).Sign > 0)
                yield return Measure.Of(middle + step, planned.Unit) is var near && planned.Open is { } open ? near.As(open) : near;
    }
}
