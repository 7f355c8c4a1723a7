using Barshow.Engine.Episodes;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Planning;
using Barshow.Engine.Planning.Baskets;
using Barshow.Engine.Planning.Bottles;
using Barshow.Engine.Planning.Claims;
using Barshow.Engine.Planning.Ice;
using Barshow.Engine.Planning.Lineup;
using Barshow.Engine.Planning.Pool;
using Barshow.Engine.Specs;
using CsCheck;
using static Barshow.Engine.Tests.Planning.PlanningBar;
using Spec = Barshow.Engine.Specs.Spec;

namespace Barshow.Engine.Tests.Planning;

/// <summary>Whatever is typed, planning answers; nothing is thrown.</summary>
public sealed class AbsurdInputTests
{
    private static readonly string[] Slugs = ["white-rum", "lime-juice", "lime", "sugar-syrup", "mint-syrup", "mint", "soda-water", "aromatic-bitters", "sugar", "unheard-of"];
    private static Gen<T> AnyOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(place => values[place]);

    private static readonly Gen<Rational> Amounts = Gen.OneOf(
        Gen.Const(Rational.Zero), Gen.Const(new Rational(1, 1_000_000_000)), Gen.Const(new Rational(99_999_999_999)), Gen.Int[1, 200].Select(whole => new Rational(whole)), Gen.Int[1, 40].Select(thirds => new Rational(thirds, 3)));

    private static readonly Gen<Measure> Measures = Gen.OneOf(
        Gen.Select(Amounts, AnyOf<Unit?>([.. Unit.All, null]), (amount, unit) => Measure.Of(amount, unit)),
        AnyOf(Enum.GetValues<OpenMeasure>()).Select(Measure.LeftOpen));

    private static readonly Gen<SpecLine> Lines = Gen.Select(Measures, AnyOf(Slugs), Gen.Enum<LineUse>(), Gen.Bool,
        (measure, slug, use, optional) => Line(measure.ToString(), slug) with { Use = use, Optional = optional });

    private static readonly Gen<LineupDrink> Made =
        from lines in Lines.Array[0, 5]
        from garnish in Gen.Select(Measures, AnyOf(Slugs), Gen.Bool)
        from takes in AnyOf<int?>(null, 0, -4, 3, int.MaxValue)
        from swaps in AnyOf(0, -1, 2, int.MaxValue)
        from number in Gen.Int[1, 3]
        from ice in Gen.Enum<IceKind>()
        select new LineupDrink
        {
            Spec = new Spec
            {
                Slug = Slug.Of($"drink {number}"),
                Name = $"Drink {number}",
                Lines = lines,
                Method = new(MethodKind.Shaken),
                Serve = new() { Ice = ice },
                Garnish = new("a garnish") { Ingredient = Slug.Parse(garnish.Item2), Measure = garnish.Item1, FromLeftovers = garnish.Item3 },
            },
            Takes = takes,
            TastedSwapOuts = swaps,
            UntastedSwapOuts = swaps,
        };

    [Fact]
    public void Any_lineup_is_stocked_and_budgeted() => Gen.Select(Made.Array[0, 4], AnyOf<double?>(null, 0, -1, 700, double.NaN, double.PositiveInfinity)).Sample((drinks, size) =>
    {
        var episode = Episode() with { Title = "Nine drinks, one bottle", Lineup = drinks, Bottle = new() { Name = "White rum", Ingredient = S("white-rum"), Millilitres = size } };
        var bar = Of(Bitters with { Packs = [new("none", M("0 ml"), 3m), new("dear", M("10 ml"), decimal.MaxValue)] });

        var viewer = BasketPlanner.Plan(episode, bar, DemandFor.Viewer);
        var shoot = BasketPlanner.Plan(episode, bar, DemandFor.Shoot);
        BasketLadder.Of(viewer, [.. drinks.Select(drink => drink.Spec.Slug).Distinct()]);
        PoolGrid.Of(episode, bar, viewer);
        BottleBudgetPlanner.Plan(episode, bar);
        ClaimChecker.Check(episode, bar);
        IcePlanner.Plan(episode, bar, DemandFor.Shoot);
        GarnishChoice.Of(episode, bar, shoot);
        Assert.All(shoot.Items, item => Assert.True(item.Left.Amount >= 0));
    }, iter: 300);

    [Fact]
    public void Any_catalogue_is_planned() => Gen.Select(Made.Array[0, 4], Gen.Int[-1, 4]).Sample((drinks, count) =>
        LineupPlanner.Plan(new()
        {
            Bar = Of(),
            Catalogue = [.. drinks.Select(drink => drink.Spec)],
            Count = count,
            Bottle = new() { Name = "White rum", Ingredient = S("white-rum"), Millilitres = 700 },
            MostMoney = decimal.MaxValue,
            MostThings = int.MaxValue,
            FreshMonths = int.MaxValue,
            Date = DateOnly.MinValue,
            GlassStock = true,
            GlassRounds = int.MaxValue,
            Takes = int.MaxValue,
            ShootBottles = int.MaxValue,
            MustHave = [S("drink-1")],
        }), iter: 60);
}
