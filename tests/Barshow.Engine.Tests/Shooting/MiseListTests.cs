using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Planning;
using Barshow.Engine.Planning.Baskets;
using Barshow.Engine.Shooting;
using Barshow.Engine.Shooting.Mise;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Tests.Shooting;

public class MiseListTests
{
    private static LineupDrink Twisted(string name) => Kit.Drink(name) is var drink
        ? drink with { Spec = drink.Spec with { Garnish = new("lime twist") { Ingredient = Slug.Of("lime"), Measure = Measure.Of(1, Unit.Twist) } } }
        : throw new InvalidOperationException();

    [Fact]
    public void Juice_is_given_in_both_units_and_in_fruit()
    {
        var episode = Kit.Episode(Kit.Drink("Salt Lane Sour", takes: 2), Kit.Drink("Harbour Sour", takes: 2));

        var task = ShootPlan.Of(episode, Kit.Bar()).Mise.Tasks.Single(task => task.Key == "juice:lime-juice");

        // 4 × 30 ml and 3 % spill are 123.6 ml, so four and a quarter ounces; five limes of 28 ml give 140 ml.
        Assert.Equal("4¼ oz · 127.5 ml from 5 limes", task.Amount);
        Assert.Equal([Slug.Of("Salt Lane Sour"), Slug.Of("Harbour Sour")], task.For);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(5)]
    public void What_is_pressed_is_what_was_bought_for_it(int takes)
    {
        var episode = Kit.Episode(Kit.Drink("Salt Lane Sour", takes: takes), Twisted("Harbour Sour"));
        var bar = Kit.Bar();
        var bought = BasketPlanner.Plan(episode, bar, DemandFor.Shoot).Fruit[Slug.Of("lime")]!;

        var task = ShootPlan.Of(episode, bar).Mise.Tasks.Single(task => task.Key == "juice:lime-juice");

        var pressed = bought.SpentShells / 2.0;
        Assert.EndsWith(FormattableString.Invariant($"from {Math.Ceiling(pressed)} limes"), task.Amount, StringComparison.Ordinal);
        Assert.True(Math.Ceiling(pressed) <= bought.Whole);
        Assert.True(task.Quantity!.InMillilitres(episode.Convention)!.Value.ToDouble() <= pressed * 28 + 1e-6);
    }

    [Fact]
    public void Fruit_is_peeled_before_it_is_pressed()
    {
        var tasks = ShootPlan.Of(Kit.Episode(Twisted("Salt Lane Sour")), Kit.Bar()).Mise.Tasks;

        Assert.True(tasks.Single(task => task.Key == "peel:lime").End <= tasks.Single(task => task.Key == "juice:lime-juice").Start);
    }

    [Fact]
    public void A_syrup_that_keeps_is_made_the_day_before_and_one_that_browns_is_made_last()
    {
        var episode = Kit.Episode(Kit.Drink("Salt Lane Sour"), Kit.Drink("Garden Fizz", basil: true));

        var day = ShootPlan.Of(episode, Kit.Bar());
        var tasks = day.Mise.Tasks;

        Assert.Equal(MiseSession.DayBefore, tasks.Single(task => task.Key == "prep:simple-syrup").Session);
        var basil = tasks.Single(task => task.Key == "prep:basil-syrup");
        Assert.Equal(TimeSpan.FromMinutes(-15), basil.End);
        Assert.Equal("It keeps 2 h and is filmed until 10:32, so it is not made before 08:20.", basil.Reason);
        Assert.DoesNotContain(day.Mise.Findings, finding => finding.Severity is not Severity.Note);
    }

    [Fact]
    public void The_hands_there_are_are_never_asked_to_do_two_things_at_once()
    {
        var episode = Kit.Episode(Twisted("Salt Lane Sour"), Kit.Drink("Garden Fizz", MethodKind.Built, Kit.Highball, basil: true), Kit.Drink("Long Walk", MethodKind.Stirred, Kit.Rocks));

        foreach (var hands in new[] { 1, 2, 3 })
        {
            var mise = ShootPlan.Of(episode, Kit.Bar(hands)).Mise;

            Assert.Empty(MiseCheck.Faults(mise));
            Assert.All(mise.Tasks.Where(task => task.Session is not MiseSession.DuringTheShoot), task => Assert.True(task.End <= TimeSpan.Zero, task.Key));
        }
    }

    [Fact]
    public void Nothing_is_done_in_the_night_that_could_be_done_in_the_morning()
    {
        var mise = ShootPlan.Of(Kit.Episode(Twisted("Salt Lane Sour"), Kit.Drink("Long Walk", MethodKind.Stirred, Kit.Rocks)), Kit.Bar()).Mise;

        var morning = mise.Tasks.Where(task => task.Session is MiseSession.BeforeTheCall).ToList();

        // One pair of hands: the morning begins when its work, frost and all, could begin latest.
        Assert.True(morning.Min(task => task.Start) >= -TimeSpan.FromHours(3), $"work begins {morning.Min(task => task.Start)} from the call");
    }

    [Fact]
    public void Glasses_are_named_in_the_plural_as_people_say_it()
    {
        var tasks = ShootPlan.Of(Kit.Episode(Kit.Drink("Salt Lane Sour", takes: 2)), Kit.Bar()).Mise.Tasks;

        Assert.Equal("Wash and polish coupes; look for chips and labels.", tasks.Single(task => task.Key == "polish:coupe").Text);
    }

    [Fact]
    public void The_bench_is_wiped_and_hands_are_clean_before_the_first_word()
    {
        var tasks = ShootPlan.Of(Kit.Episode(Kit.Drink("Salt Lane Sour")), Kit.Bar()).Mise.Tasks;

        Assert.Equal("clean", tasks.Last(task => task.Session is MiseSession.BeforeTheCall).Key);
    }

    [Fact]
    public void Chilled_glasses_are_in_the_freezer_two_hours_before_their_first_take()
    {
        var day = ShootPlan.Of(Kit.Episode(Kit.Drink("Salt Lane Sour", chilled: true)), Kit.Bar());

        var task = day.Mise.Tasks.Single(task => task.Key == "chill:coupe");
        var take = day.Order.Blocks.First(block => block.Take == 1);
        Assert.True(task.End <= take.Start - TimeSpan.FromHours(2));
    }

    private static MiseTask CutOf(string name, IngredientKind kind, int pieces)
    {
        var slug = Slug.Of(name);
        var bar = Kit.Bar(more: [new() { Slug = slug, Name = name, Kind = kind }]);
        var drink = Kit.Drink("Salt Lane Sour", takes: 1);
        drink = drink with { Spec = drink.Spec with { Lines = [.. drink.Spec.Lines, new() { Name = name, Ingredient = slug, Amounts = [new(AmountLayer.Library, Measure.Of(pieces, Unit.Piece))] }] } };
        return ShootPlan.Of(Kit.Episode(drink), bar).Mise.Tasks.Single(task => task.Key.StartsWith($"cut:{slug}", StringComparison.Ordinal));
    }

    [Fact]
    public void A_whole_egg_is_cracked_and_not_separated()
    {
        var task = CutOf("Egg", IngredientKind.Egg, 1);

        Assert.Equal("Crack eggs one by one over a small bowl.", task.Text);
        Assert.Equal("Cracked eggs are used the same day and stay chilled at 5 °C or below.", task.Reason);
    }

    [Fact]
    public void Jarred_cherries_have_a_reason_of_their_own_and_a_plural_as_people_say_it()
    {
        var task = CutOf("Cocktail cherry", IngredientKind.Preserve, 2);

        Assert.EndsWith(" cocktail cherries", task.Amount, StringComparison.Ordinal);
        Assert.Equal("Drained ahead, so that no syrup drips into the drink.", task.Reason);
    }

    [Fact]
    public void A_tool_the_kit_does_not_list_is_a_finding()
    {
        var bar = Kit.Bar();
        bar = bar with { Kit = bar.Kit with { Tools = [new(Slug.Of("shaker"), "Shaker"), new(Slug.Of("strainer"), "Strainer")] } };

        var findings = ShootPlan.Of(Kit.Episode(Kit.Drink("Salt Lane Sour")), bar).Mise.Findings;

        Assert.Contains(findings, finding => finding.Message == "Salt Lane Sour needs a fine sieve, which the bar kit does not list.");
    }

    [Fact]
    public void What_goes_into_a_syrup_is_measured_in_its_own_steps_and_not_once_more()
    {
        var tasks = ShootPlan.Of(Kit.Episode(Kit.Drink("Garden Fizz", basil: true)), Kit.Bar()).Mise.Tasks;

        Assert.DoesNotContain(tasks, task => task.Key.StartsWith("cut:basil", StringComparison.Ordinal));
        // 15 ml, 3 % spill, 10 % spare: 17 ml, so 22.5 ml; a batch of 280 ml takes 300 ml of syrup and 30 g of basil: 24.1 ml and 2.4 g.
        Assert.Equal("Measure 1 oz · 30 ml simple syrup, 3 g basil.", tasks.Single(task => task.Key == "prep:basil-syrup").Steps[0]);
    }

    [Theory]
    [InlineData(Convention.Bar)]
    [InlineData(Convention.UsExact)]
    [InlineData(Convention.ImperialExact)]
    public void The_two_units_of_an_amount_always_agree(Convention convention)
    {
        for (var millilitres = 1.0; millilitres < 2_000; millilitres *= 1.13)
        {
            var measure = DualAmount.RoundUp(millilitres, convention);

            Assert.True(Callout.Of(measure, convention).Agrees, $"{millilitres} ml");
            Assert.InRange(measure.InMillilitres(convention)!.Value.ToDouble(), millilitres - 1e-3, millilitres + 7.5);
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void Nothing_can_be_moved_later_by_itself(int hands)
    {
        var episode = Kit.Episode([.. Enumerable.Range(1, 5).Select(i => Twisted($"Sour {i}")), Kit.Drink("Garden Fizz", basil: true, salt: true)]);

        var mise = ShootPlan.Of(episode, Kit.Bar(hands)).Mise;

        foreach (var task in mise.Tasks.Where(task => task.Session is not MiseSession.DuringTheShoot && task.End < task.NotAfter))
        {
            var later = mise with { Tasks = [.. mise.Tasks.Select(other => other == task ? task with { Start = task.Start.Add(TimeSpan.FromMinutes(1)), End = task.End.Add(TimeSpan.FromMinutes(1)) } : other)] };
            Assert.NotEmpty(MiseCheck.Faults(later));
        }
    }
}
