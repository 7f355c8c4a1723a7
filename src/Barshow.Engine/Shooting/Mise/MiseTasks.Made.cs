using System.Globalization;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;
using Barshow.Engine.Planning;
using Barshow.Engine.Planning.Demand;
using Barshow.Engine.Shooting.Order;

namespace Barshow.Engine.Shooting.Mise;

/// <content>What is made: house preps, pressed juices.</content>
internal sealed partial class MiseTasks
{
    private void AddPreps()
    {
        foreach (var need in _demand.Preps)
        {
            var prep = need.Prep.Prep!;
            var shares = BatchesOf(need.Prep, [.. need.Parts.Select(part => part.Drink).Distinct()]);
            foreach (var (batch, drinks) in shares)
            {
                var share = shares.Count == 1 || need.Millilitres <= 0 ? 1 : need.Parts.Where(part => drinks.Contains(part.Drink)).Sum(part => part.Amount.Amount) / need.Millilitres;
                var quantity = DualAmount.RoundUp(need.Millilitres * share * (1 + _pace.SpareShare), _episode.Convention);
                var millilitres = quantity.InMillilitres(_episode.Convention)!.Value.ToDouble();
                var batches = need.YieldMillilitres > 0 && millilitres > 0 ? millilitres / need.YieldMillilitres : 1;
                var inputs = prep.Inputs.Select(input => $"{InputAmount(input, batches)} {Lower(_bar.Ingredients[input.Ingredient]?.Name ?? input.Ingredient.Text)}").ToList();
                _tasks.Add(Window(need.Prep, batch, drinks, prep.HandsOn) with
                {
                    Key = KeyOf("prep", need.Prep.Slug, batch),
                    Text = batch == 1 ? $"Make {Lower(need.Prep.Name)}." : $"Make {Lower(need.Prep.Name)} again.",
                    Steps = inputs.Count == 0 ? prep.Steps : [$"Measure {string.Join(", ", inputs)}.", .. prep.Steps],
                    Station = prep.Equipment.Length > 0 ? prep.Equipment : "Kitchen",
                    Amount = millilitres > 0 ? DualAmount.Say(quantity, _episode.Convention, _bar.House.UnitOrder) : "",
                    Quantity = millilitres > 0 ? quantity : null,
                    Equipment = prep.Equipment,
                    Makes = need.Prep.Slug,
                    After = [.. prep.Inputs.SelectMany(input => new[] { KeyOf("prep", input.Ingredient, 1), KeyOf("juice", input.Ingredient, 1), $"peel:{input.Ingredient}" })],
                });
            }
        }
    }

    private void AddJuices()
    {
        foreach (var need in _demand.Ingredients)
        {
            if (need.Ingredient is not { } juice || need.Millilitres <= 0 || !Pressing.IsPressed(juice, _bar.Ingredients) || Pressing.FruitOf(juice, _bar.Ingredients) is not { } fruit)
                continue;
            var shares = BatchesOf(juice, need.Drinks);
            foreach (var (batch, drinks) in shares)
            {
                var exact = need.Parts.Where(part => shares.Count == 1 || drinks.Contains(part.Drink)).Sum(part => part.Amount.Amount);
                // One batch presses the fruit that are bought for it, so the list speaks of the same fruit and the same juice as the order.
                var plan = shares.Count == 1 ? _fruit[fruit.Slug] : null;
                var quantity = plan is null
                    ? DualAmount.RoundUp(exact, _episode.Convention)
                    : DualAmount.UpTo(exact, exact + plan.SpareJuiceMillilitres, _episode.Convention);
                var millilitres = quantity.InMillilitres(_episode.Convention)!.Value.ToDouble();
                var whole = Math.Ceiling(plan is null ? millilitres / fruit.Produce!.JuiceMillilitres : plan.SpentShells / 2.0);
                _tasks.Add(Window(juice, batch, drinks, MadeInHouse.HandsOn(juice, _pace, millilitres)) with
                {
                    Key = KeyOf("juice", juice.Slug, batch),
                    Text = batch == 1 ? $"Press {Lower(juice.Name)} and strain it." : $"Press {Lower(juice.Name)} again.",
                    Steps = ["Wash the fruit.", .. shares.Count == 1 ? PressingSteps(fruit) : [], "Strain, cover, label with the hour, chill."],
                    Station = "Press",
                    Amount = string.Create(CultureInfo.InvariantCulture, $"{DualAmount.Say(quantity, _episode.Convention, _bar.House.UnitOrder)} from {whole:0} {(whole > 1 ? Many(Lower(fruit.Name)) : Lower(fruit.Name))}"),
                    Quantity = quantity,
                    Equipment = "citrus press",
                    Makes = juice.Slug,
                    After = [$"peel:{fruit.Slug}"],
                });
            }
        }
    }

    private IEnumerable<string> PressingSteps(Ingredient fruit) => _fruit[fruit.Slug] is { } plan
        ? plan.Uses.Select(use => string.Create(CultureInfo.InvariantCulture, $"{use.Count} {(use.Count == 1 ? Lower(fruit.Name) : Many(Lower(fruit.Name)))}: {use.Words}."))
        : [];

    /// <summary>Which batch serves which drinks; one batch for all where the day is short enough for it.</summary>
    private IReadOnlyList<(int Batch, IReadOnlyList<Slug> Drinks)> BatchesOf(Ingredient made, IReadOnlyList<Slug> drinks)
    {
        var stretches = _order.Fresh.Where(stretch => stretch.Prep == made.Slug).ToList();
        if (stretches.Count < 2)
            return [(1, drinks)];
        var shares = stretches.Where(stretch => stretch.Drinks.Count > 0).Select(stretch => (stretch.Batch, stretch.Drinks)).ToList();
        return shares.Count == 0 ? [(1, drinks)] : shares;
    }

    /// <summary>The task's bounds: late enough to be fresh at its last use, early enough to have rested at its first.</summary>
    private MiseTask Window(Ingredient made, int batch, IReadOnlyList<Slug> drinks, TimeSpan duration)
    {
        duration = Minutes(duration.TotalMinutes);
        var (first, last) = (FirstUse(drinks), LastUse(drinks));
        if (batch > 1 && _order.Blocks.Where(block => block.Kind is BlockKind.Batch && block.Prep == made.Slug).Skip(batch - 2).FirstOrDefault() is { } block)
            return new()
            {
                Key = "",
                Text = "",
                Station = "",
                Duration = block.End - block.Start,
                Start = block.Start,
                End = block.End,
                NotBefore = last - (made.Fresh?.Best ?? TimeSpan.Zero) - (block.End - block.Start),
                NotAfter = first - (made.Fresh?.Ready ?? TimeSpan.Zero),
                Session = MiseSession.DuringTheShoot,
                For = drinks,
                Reason = block.Reason,
            };

        var rest = made.Fresh?.Ready ?? TimeSpan.Zero;
        var keeps = made.Fresh?.Best;
        var dayBefore = keeps is null || DayBeforeEnds + keeps >= last;
        var ends = dayBefore ? DayBeforeEnds : PrepEnds;
        if (rest > TimeSpan.Zero)
            ends = Earlier(ends, first - rest);
        var lasting = keeps is { } best ? $"It keeps {SayKeeping(best)}" : "It keeps";
        return new()
        {
            Key = "",
            Text = "",
            Station = "",
            Duration = duration,
            NotBefore = keeps is { } fresh ? last - fresh - duration : TimeSpan.FromDays(-30),
            NotAfter = ends,
            Session = dayBefore ? MiseSession.DayBefore : MiseSession.BeforeTheCall,
            Perishes = dayBefore ? 0 : keeps is { } window ? Math.Clamp((int)(24 / Math.Max(1, window.TotalHours)), 1, 12) : 0,
            For = drinks,
            Reason = dayBefore
                ? $"{lasting}, so it is made the day before{(rest > TimeSpan.Zero ? $"; it rests {SayKeeping(rest)} first" : "")}."
                : $"{lasting} and is filmed until {_order.Clock.Say(last)}, so it is not made before {_order.Clock.Say(last - keeps!.Value - duration)}.",
        };
    }

    private string InputAmount(PrepInput input, double batches)
    {
        var amount = input.Amount.Middle?.ToDouble() * batches;
        if (amount is not { } total)
            return "some";
        if (input.Amount.InMillilitres(_episode.Convention, _bar.House.BarSizes) is { } each)
            return DualAmount.Say(DualAmount.RoundUp(each.ToDouble() * batches, _episode.Convention), _episode.Convention, _bar.House.UnitOrder);
        if (input.Amount.Unit?.Grams is { } grams)
            return Quantity.Grams(Math.Ceiling((total * grams.ToDouble()) - 1e-6)).ToString();
        return Quantity.Pieces(Math.Ceiling(total - 1e-6), input.Amount.Unit).ToString();
    }

    private static string SayKeeping(TimeSpan span) => span.TotalDays >= 2
        ? string.Create(CultureInfo.InvariantCulture, $"{span.TotalDays:0} days")
        : ShootClock.SayDuration(span);

    private static string KeyOf(string what, Slug slug, int batch) => batch == 1 ? $"{what}:{slug}" : string.Create(CultureInfo.InvariantCulture, $"{what}:{slug}:{batch}");
}
