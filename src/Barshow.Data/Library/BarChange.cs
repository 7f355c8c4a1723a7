using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Data.Library;

/// <summary>What is different between two states of the bar, as far as the reckoning of a drink goes.</summary>
/// <remarks>What was not read again is the same object, so two states are compared by looking, not by value.</remarks>
internal sealed class BarChange
{
    private readonly bool _everything;
    private readonly HashSet<Slug> _changed = [];

    private BarChange(Bar before, Bar after)
    {
        _everything = !ReferenceEquals(before.Kit, after.Kit) || before.House.Convention != after.House.Convention || before.House.BarSizes != after.House.BarSizes;
        if (_everything || ReferenceEquals(before, after))
            return;
        foreach (var slug in before.Ingredients.All.Concat(after.Ingredients.All).Select(each => each.Slug).Where(slug => !ReferenceEquals(before.Ingredients[slug], after.Ingredients[slug])))
            _changed.Add(slug);
        // A prep changes with its inputs, a juice with its fruit and a fruit with its juice.
        while (Kin(before).Concat(Kin(after)).Where(_changed.Add).ToList().Count > 0)
        {
        }
    }

    public static BarChange Between(Bar before, Bar after) => new(before, after);

    /// <summary>Whether a drink must be reckoned anew.</summary>
    public bool Touches(Spec spec) =>
        _everything || spec.Lines.Any(line => _changed.Contains(line.Ingredient)) || (spec.Garnish is { } garnish && _changed.Contains(garnish.Ingredient));

    private IEnumerable<Slug> Kin(Bar bar) => bar.Ingredients.All.SelectMany(KinOf);

    private IEnumerable<Slug> KinOf(Ingredient ingredient)
    {
        if (ingredient.Prep?.Inputs.Any(input => _changed.Contains(input.Ingredient)) ?? false)
            yield return ingredient.Slug;
        if (ingredient.Produce is not { Juice.IsEmpty: false } produce)
            yield break;
        if (_changed.Contains(ingredient.Slug))
            yield return produce.Juice;
        if (_changed.Contains(produce.Juice))
            yield return ingredient.Slug;
    }
}
