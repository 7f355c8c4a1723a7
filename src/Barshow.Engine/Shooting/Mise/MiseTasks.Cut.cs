using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Planning;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Shooting.Mise;

/// <content>What is cut, picked and rimmed.</content>
internal sealed partial class MiseTasks
{
    private static readonly Slug WholeEgg = Slug.Of("egg");

    private void AddCuts()
    {
        // What goes into a house prep is measured and cut when that is made.
        foreach (var need in _demand.Ingredients.Where(need => need.Ingredient?.Kind is IngredientKind.Fruit or IngredientKind.Vegetable or IngredientKind.Herb or IngredientKind.Egg or IngredientKind.Preserve))
            foreach (var group in need.Parts.Where(part => part.Amount is { Kind: QuantityKind.Pieces, Amount: > 0 } && !part.FromLeftovers && part.Through is null).GroupBy(part => part.Amount.Cut))
            {
                var pieces = Math.Ceiling(group.Sum(part => part.Amount.Amount) - 1e-6);
                var drinks = group.Select(part => part.Drink).Distinct().ToList();
                var garnish = group.All(part => part.Garnish);
                var (what, station, minutes) = Cutting(need.Ingredient!, group.Key, pieces);
                var twist = group.Key == Unit.Twist;
                var amount = Quantity.Pieces(pieces, group.Key).ToString();
                _tasks.Add(new()
                {
                    Key = twist ? $"peel:{need.Slug}" : $"cut:{need.Slug}:{group.Key?.Name ?? "whole"}",
                    Text = $"{what}{(garnish ? ", for garnish" : "")}.",
                    Station = station,
                    Amount = group.Key is null ? Count(pieces, Lower(need.Name), Many(Lower(need.Name))) : amount,
                    Quantity = Measure.Of(new Rational((long)pieces), group.Key),
                    Duration = Minutes(minutes),
                    NotBefore = TimeSpan.FromHours(-12),
                    NotAfter = PrepEnds,
                    Perishes = need.Ingredient!.Kind is IngredientKind.Preserve ? 0 : twist ? 3 : 2,
                    For = drinks,
                    Reason = twist ? "Peel comes before juice: a pressed fruit gives no clean twist. Twists keep 2 to 4 h under a damp cloth."
                        : need.Ingredient.Kind is IngredientKind.Egg ? need.Slug == WholeEgg ? "Cracked eggs are used the same day and stay chilled at 5 °C or below." : "Separated eggs are used the same day and stay chilled at 5 °C or below."
                        : need.Ingredient.Kind is IngredientKind.Preserve ? "Drained ahead, so that no syrup drips into the drink."
                        : "Cut the same day, so that edges do not dry.",
                });
            }
    }

    private (string Text, string Station, double Minutes) Cutting(Ingredient ingredient, Unit? cut, double pieces)
    {
        var name = Lower(ingredient.Name);
        return ingredient.Kind switch
        {
            IngredientKind.Herb => ($"Wash, dry and pick {name}", "Cutting board", 3 + pieces / 10),
            IngredientKind.Egg when ingredient.Slug == WholeEgg => ($"Crack {Many(name)} one by one over a small bowl", "Cutting board", 2 + pieces / 2),
            IngredientKind.Egg => ($"Crack and separate {name}s one by one over a small bowl", "Cutting board", 2 + pieces / 2),
            IngredientKind.Preserve => ($"Drain and skewer {name}", "Cutting board", 1 + pieces / 4),
            _ when cut == Unit.Twist => ($"Peel {name} twists", "Cutting board", pieces * _pace.TwentyTwistsMinutes / 20.0),
            _ when cut is null => ($"Wash and quarter {name}", "Cutting board", 2 + pieces * _pace.TwentyWheelsMinutes / 20.0),
            _ => ($"Cut {name} {cut.SpokenMany}", "Cutting board", 1 + pieces * _pace.TwentyWheelsMinutes / 20.0),
        };
    }

    private void AddRims()
    {
        foreach (var drink in _episode.Lineup)
            foreach (var line in drink.Spec.Lines.Where(line => line.Use is LineUse.Rimmed))
            {
                var glasses = _episode.TakesOf(drink) + DoublesOf(drink);
                var duration = Minutes(1 + glasses * _pace.RimMinutes);
                var first = FirstUse([drink.Spec.Slug]);
                var early = first <= TimeSpan.FromHours(1);
                var end = early ? PrepEnds : first;
                _tasks.Add(new()
                {
                    Key = $"rim:{drink.Spec.Slug}",
                    Text = $"Rim the glasses of {drink.Name} with {Lower(line.Name)}, half the rim.",
                    Station = "Glass bench",
                    Amount = Count(glasses, "glass", "glasses"),
                    Quantity = Measure.Of(glasses, Unit.Piece),
                    Duration = duration,
                    NotBefore = first - TimeSpan.FromHours(1) - duration,
                    NotAfter = end,
                    Start = early ? TimeSpan.Zero : first - duration,
                    End = early ? TimeSpan.Zero : first,
                    Session = early ? MiseSession.BeforeTheCall : MiseSession.DuringTheShoot,
                    Perishes = early ? 4 : 0,
                    For = [drink.Spec.Slug],
                    After = [$"polish:{drink.Spec.Serve.Glass}"],
                    Reason = "A rim stands an hour or two and weeps on a damp or chilled glass.",
                });
            }
    }
}
