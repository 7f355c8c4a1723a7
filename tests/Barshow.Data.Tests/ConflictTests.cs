using System.Text.Json;
using Barshow.Data.Conflicts;
using Barshow.Data.Json;
using Barshow.Data.Tests.Support;
using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;
using CsCheck;
using Spec = Barshow.Engine.Specs.Spec;

namespace Barshow.Data.Tests;

/// <summary>Saving over someone's change: what differs, in plain words, and the state that comes of the choices.</summary>
public sealed class ConflictTests
{
    private static readonly Spec Before = Make.Drink() with { Taste = "sharp", Tags = ["citrus", "dry"], Steps = ["Shake.", "Strain."] };

    [Fact]
    public void Two_same_states_have_no_differences() => Assert.Empty(Compare(Before, Before).Differences);

    [Fact]
    public void A_field_that_one_side_changed_is_taken_from_that_side()
    {
        var comparison = Compare(Before with { Taste = "soft" }, Before with { Family = "highball" });

        Assert.Equal(
            [("family", "sour", "sour", "highball", Side.Theirs, false), ("taste", "sharp", "soft", "sharp", Side.Mine, false)],
            comparison.Differences.Select(each => (each.Label, each.Before, each.Mine, each.Theirs, each.Usual, each.Clash)).Order());
        var joined = comparison.Join(new Dictionary<string, Side>());
        Assert.Equal(("soft", "highball"), (joined.Taste, joined.Family));
        Assert.False(comparison.Clashes);
    }

    [Fact]
    public void A_field_that_both_changed_is_a_clash_and_the_user_chooses()
    {
        var comparison = Compare(Before with { Taste = "soft" }, Before with { Taste = "salty" });

        var difference = Assert.Single(comparison.Differences);
        Assert.Equal(new Difference("taste", "taste", "sharp", "soft", "salty", Clash: true, Side.Mine), difference);
        Assert.Equal("salty", comparison.Join(new Dictionary<string, Side> { ["taste"] = Side.Theirs }).Taste);
        Assert.Equal("soft", comparison.Join(new Dictionary<string, Side> { ["taste"] = Side.Mine }).Taste);
    }

    [Fact]
    public void A_field_that_both_changed_alike_is_no_difference() =>
        Assert.Empty(Compare(Before with { Taste = "soft" }, Before with { Taste = "soft" }).Differences);

    [Fact]
    public void An_amount_is_named_by_its_line_and_its_layer()
    {
        var comparison = Compare(WithAmount(Before, Measure.Ounces(2)), WithAmount(Before, Measure.Millilitres(45, 2)));

        var difference = Assert.Single(comparison.Differences);
        Assert.Equal("lines[white rum].amounts[library].measure", difference.Path);
        Assert.Equal("lines › white rum › amounts › library › measure", difference.Label);
        Assert.Equal(("1½ oz", "2 oz", "22.5 ml"), (difference.Before, difference.Mine, difference.Theirs));
        Assert.Equal(Measure.Millilitres(45, 2), comparison.Join(new Dictionary<string, Side> { [difference.Path] = Side.Theirs }).Lines[0].Planned);
    }

    [Fact]
    public void Lines_that_each_side_added_are_both_kept_where_they_were_put()
    {
        var mine = Before with { Lines = [.. Before.Lines, Line("mint")] };
        var theirs = Before with { Lines = [Line("sugar syrup"), .. Before.Lines] };

        var joined = Compare(mine, theirs).Join(new Dictionary<string, Side>());

        Assert.Equal(["sugar syrup", "white rum", "lime juice", "mint"], joined.Lines.Select(line => line.Name));
    }

    [Fact]
    public void A_line_that_one_side_took_out_is_gone_unless_the_other_changed_it()
    {
        var without = Before with { Lines = [Before.Lines[1]] };

        Assert.Equal(["lime juice"], Compare(without, Before with { Taste = "soft" }).Join(new Dictionary<string, Side>()).Lines.Select(line => line.Name));

        var comparison = Compare(without, WithAmount(Before, Measure.Ounces(2)));
        var difference = Assert.Single(comparison.Differences);
        Assert.Equal(("lines › white rum", "nothing", "white rum (library 2 oz)", true), (difference.Label, difference.Mine, difference.Theirs, difference.Clash));
        Assert.Equal(["white rum", "lime juice"], comparison.Join(new Dictionary<string, Side> { [difference.Path] = Side.Theirs }).Lines.Select(line => line.Name));
    }

    [Fact]
    public void An_order_that_one_side_changed_is_taken_from_that_side()
    {
        var turned = Before with { Lines = [.. Before.Lines.Reverse()] };

        var comparison = Compare(Before with { Taste = "soft" }, turned);

        var order = comparison.Differences.Single(each => each.Path == "lines.order");
        Assert.Equal(("lines › order", "white rum, lime juice", "white rum, lime juice", "lime juice, white rum", Side.Theirs), (order.Label, order.Before, order.Mine, order.Theirs, order.Usual));
        Assert.Equal(["lime juice", "white rum"], comparison.Join(new Dictionary<string, Side>()).Lines.Select(line => line.Name));
    }

    [Fact]
    public void A_field_that_was_left_as_new_is_shown_with_what_a_new_one_has()
    {
        var episode = Make.Episode();

        var difference = Assert.Single(new ThreeWayComparison<Episode>(episode, episode with { Takes = 3 }, episode with { Takes = 2 }).Differences);

        Assert.Equal(("takes", "1", "3", "2"), (difference.Label, difference.Before, difference.Mine, difference.Theirs));
    }

    [Fact]
    public void Ticks_that_each_side_made_are_both_kept()
    {
        var episode = Make.Episode() with { Ticked = ["juice"] };

        var joined = new ThreeWayComparison<Episode>(episode, episode with { Ticked = ["juice", "ice"] }, episode with { Ticked = ["juice", "peel"] }).Join(new Dictionary<string, Side>());

        Assert.Equal(["juice", "peel", "ice"], joined.Ticked);
    }

    [Fact]
    public void A_drink_of_a_lineup_is_named_and_compared_inside()
    {
        var episode = Make.Episode("One", Make.Drink("Low Tide"), Make.Drink("Sand Bar"));
        var mine = episode with { Lineup = [episode.Lineup[0] with { Takes = 3 }, episode.Lineup[1]] };
        var theirs = episode with { Lineup = [episode.Lineup[0] with { Spec = episode.Lineup[0].Spec with { Taste = "salty" } }, episode.Lineup[1]] };

        var comparison = new ThreeWayComparison<Episode>(episode, mine, theirs);

        Assert.Equal(["lineup › low-tide › spec › taste", "lineup › low-tide › takes"], comparison.Differences.Select(each => each.Label).Order(StringComparer.Ordinal));
        var joined = comparison.Join(new Dictionary<string, Side>());
        Assert.Equal((3, "salty"), (joined.Lineup[0].Takes, joined.Lineup[0].Spec.Taste));
    }

    [Fact]
    public void A_list_in_which_two_have_one_name_is_one_field()
    {
        var twice = Before with { Lines = [Line("lime juice"), Line("lime juice")] };
        var mine = twice with { Lines = [Line("lime juice"), Line("lime juice"), Line("salt")] };
        var theirs = twice with { Lines = [Line("lime juice")] };

        var difference = Assert.Single(new ThreeWayComparison<Spec>(twice, mine, theirs).Differences);

        Assert.Equal(("lines", true), (difference.Label, difference.Clash));
        Assert.Equal("lime juice (library 1 oz), lime juice (library 1 oz), salt (library 1 oz)", difference.Mine);
    }

    [Fact]
    public void A_part_that_was_set_and_unset_is_chosen_whole()
    {
        var comparison = Compare(Before with { Method = null }, Before with { Method = new(MethodKind.Stirred, 30) });

        var difference = Assert.Single(comparison.Differences);
        Assert.Equal(("method", "kind shaken; seconds 12", "nothing", "kind stirred; seconds 30"), (difference.Label, difference.Before, difference.Mine, difference.Theirs));
        Assert.Null(comparison.Join(new Dictionary<string, Side>()).Method);
    }

    [Fact]
    public void Settings_and_ingredients_are_compared_as_well()
    {
        var house = new House();
        Assert.Equal("spill share", Assert.Single(new ThreeWayComparison<House>(house, house with { SpillShare = 0 }, house).Differences).Label);
        var rum = Make.Ingredient();
        var change = Assert.Single(new ThreeWayComparison<Ingredient>(rum, rum with { Staple = true }, rum).Differences);
        Assert.Equal(("staple", "yes", "no"), (change.Label, change.Mine, change.Theirs));
    }

    [Fact]
    public void Taking_one_side_in_everything_gives_that_side()
    {
        var texts = Gen.Int[0, 2].Select(which => new[] { "", "soft", "sharp" }[which]);
        var lines = Gen.Shuffle(new[] { "white rum", "lime juice", "mint", "salt" }).SelectMany(shuffled => Gen.Int[0, 4].Select(count => shuffled.Take(count).ToArray()));
        var states = Gen.Select(texts, texts, lines, Gen.Int[1, 3], (taste, family, names, ounces) =>
            Before with { Taste = taste, Family = family, Lines = [.. names.Select(name => Line(name, ounces))] });

        Gen.Select(states, states, states).Sample((before, mine, theirs) =>
        {
            var comparison = new ThreeWayComparison<Spec>(before, mine, theirs);
            return Json(comparison.Join(All(comparison, Side.Mine))) == Json(mine) && Json(comparison.Join(All(comparison, Side.Theirs))) == Json(theirs);
        });
    }

    private static ThreeWayComparison<Spec> Compare(Spec mine, Spec theirs) => new(Before, mine, theirs);

    private static Dictionary<string, Side> All(ThreeWayComparison<Spec> comparison, Side side) => comparison.Differences.ToDictionary(each => each.Path, _ => side);

    private static Spec WithAmount(Spec spec, Measure measure) => spec with { Lines = [spec.Lines[0] with { Amounts = [new(AmountLayer.Library, measure)] }, spec.Lines[1]] };

    private static SpecLine Line(string name, int ounces = 1) => new() { Name = name, Ingredient = Slug.Of(name), Amounts = [new(AmountLayer.Library, Measure.Ounces(ounces))] };

    private static string Json(Spec spec) => JsonSerializer.Serialize(spec, DomainJson.Compact);
}
