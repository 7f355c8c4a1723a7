using Barshow.Engine.Findings;
using Barshow.Engine.Planning;
using Barshow.Engine.Planning.Baskets;
using Barshow.Engine.Planning.Demand;
using Barshow.Engine.Planning.Lineup;
using CsCheck;
using static Barshow.Engine.Tests.Planning.PlanningBar;
using MethodKind = Barshow.Engine.Specs.MethodKind;
using Spec = Barshow.Engine.Specs.Spec;

namespace Barshow.Engine.Tests.Planning;

/// <summary>Small questions, answered again by looking at every lineup with the plain computations only.</summary>
public sealed class LineupExhaustiveTests
{
    private static readonly string[] Families = ["sour", "highball", "fizz"];
    private static readonly string[] Glasses = ["coupe", "highball", "rocks"];
    private static readonly (string Measure, string Slug)[] Parts =
    [
        ("25 ml", "lime-juice"), ("15 ml", "sugar-syrup"), ("15 ml", "mint-syrup"), ("120 ml", "soda-water"), ("2 dash", "aromatic-bitters"), ("6 leaf", "mint"), ("4 wedge", "lime"), ("2 wheel", "lime"), ("1 twist", "lime"), ("100 ml", "white-rum"),
    ];

    private static readonly Gen<LineupQuestion> Questions =
        from drinks in Gen.Select(Gen.Int[0, 1023], Gen.Int[0, 2], Gen.Int[0, 2], Gen.Int[0, 2]).Array[4, 8]
        from count in Gen.Int[1, 3]
        from things in Gen.Int[2, 8]
        from cap in Gen.Int[1, 3]
        from floor in Gen.Int[0, 2]
        from bottle in Gen.Int[100, 400]
        from aims in Gen.Shuffle(Enum.GetValues<Aim>())
        select Ask(drinks, count, things, cap, floor, bottle, aims);

    private static LineupQuestion Ask((int Parts, int Family, int Method, int Glass)[] drinks, int count, int things, int cap, int floor, int bottle, Aim[] aims)
    {
        MethodKind[] methods = [MethodKind.Shaken, MethodKind.Stirred, MethodKind.Built];
        Spec[] catalogue = [.. drinks.Select((drink, number) => LineupBar.Made(
            $"Drink {number}", Families[drink.Family], methods[drink.Method], Glasses[drink.Glass], [$"tag {drink.Parts % 3}"],
            [.. Parts.Where((_, part) => (drink.Parts >> part & 1) == 1)]))];
        return LineupBar.Question(catalogue) with
        {
            Count = count,
            MostThings = things,
            MostOfAFamily = cap,
            Floors = floor == 0 ? [] : [new(FloorOn.Method, "stirred", floor)],
            Bottle = new() { Name = "White rum", Ingredient = S("white-rum"), Millilitres = bottle },
            Bar = LineupBar.Question().Bar with { Ingredients = Of(WhiteRum with { Packs = [new("bottle", M($"{bottle} ml"), 9m)] }).Ingredients },
            LastFeatured = catalogue.Where((_, number) => number % 3 == 1).ToDictionary(spec => spec.Slug, spec => new DateOnly(2025, 1 + spec.Name.Length % 3 + catalogue.Length % 5, 3)),
            Date = new DateOnly(2026, 11, 24),
            Aims = aims,
        };
    }

    [Fact]
    public void No_lineup_is_better_when_every_lineup_is_looked_at() =>
        Questions.Sample(
            question =>
            {
                var plan = LineupPlanner.Plan(question);
                var best = Every(question).Select(lineup => ValuesOf(question, lineup)).OrderBy(values => values, Comparer<decimal[]>.Create((left, right) => left.AsSpan().SequenceCompareTo(right))).FirstOrDefault();

                Assert.Equal(best is null ? LineupOutcome.Impossible : LineupOutcome.Planned, plan.Outcome);
                Assert.DoesNotContain(plan.Findings, finding => finding.Kind == FindingCatalogue.LineupBreaks);
                Assert.All(plan.Levels, level => Assert.True(level.Proven));
                if (best is not null)
                    Assert.Equal(best, plan.Levels.Select(level => level.Aim is Aim.Variety ? -level.Value : level.Value));
                else
                    Assert.Equal(FewestToRelax(question), plan.Relax.Count);
            },
            iter: 60);

    private static IEnumerable<Spec[]> Every(LineupQuestion question) => Subsets(question.Catalogue, question.Count).Where(lineup => Broken(question, lineup) == 0);

    private static int FewestToRelax(LineupQuestion question) =>
        Enumerable.Range(0, question.Count + 1).SelectMany(count => Subsets(question.Catalogue, count)).Min(lineup => Broken(question, lineup));

    private static int Broken(LineupQuestion question, Spec[] lineup) =>
        LineupCheck.Check(question, [.. lineup.Select(spec => new LineupPick(spec, false))], BasketPlanner.Plan(LineupCheck.EpisodeOf(question, lineup), question.Bar, DemandFor.Viewer)).Count;

    private static decimal[] ValuesOf(LineupQuestion question, Spec[] lineup)
    {
        var basket = BasketPlanner.Plan(LineupCheck.EpisodeOf(question, lineup), question.Bar, DemandFor.Viewer);
        return [.. question.Aims.Select(aim => aim switch
        {
            Aim.Cost => basket.Cost,
            Aim.Variety => -(lineup.Select(spec => spec.Family).Distinct().Count() + lineup.Select(spec => spec.Method!.Kind).Distinct().Count()
                + lineup.Select(spec => spec.Serve.Glass).Distinct().Count() + lineup.SelectMany(spec => spec.Tags).Distinct().Count()),
            // Sixty months are the horizon; a month counts when it is full.
            Aim.Freshness => lineup.Where(spec => question.LastFeatured.ContainsKey(spec.Slug))
                .Sum(spec => 60 - Enumerable.Range(1, 60).Count(months => question.LastFeatured[spec.Slug].AddMonths(months) <= question.Date)),
            _ => lineup.Sum(spec => spec.Method!.Kind is MethodKind.Built ? 6 : 7)
                + DemandPlanner.Of(LineupCheck.EpisodeOf(question, lineup), question.Bar, DemandFor.Viewer).Preps.Sum(prep => (decimal)prep.Prep.Prep!.HandsOn.TotalMinutes),
        })];
    }

    private static IEnumerable<Spec[]> Subsets(IReadOnlyList<Spec> from, int count) =>
        count == 0 ? [[]] : Enumerable.Range(0, from.Count).SelectMany(first => Subsets([.. from.Skip(first + 1)], count - 1).Select(rest => (Spec[])[from[first], .. rest]));
}
