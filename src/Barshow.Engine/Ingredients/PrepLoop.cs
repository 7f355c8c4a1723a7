using Barshow.Engine.Names;

namespace Barshow.Engine.Ingredients;

/// <summary>House preps that are made from one another in a circle, so that none of them can ever be made.</summary>
public static class PrepLoop
{
    /// <summary>The circle that a prep is part of, from itself back to itself; empty when there is none.</summary>
    /// <param name="prep">The prep as it is to be, which need not be on the shelf yet.</param>
    /// <param name="shelf">The other ingredients.</param>
    public static IReadOnlyList<Ingredient> Of(Ingredient prep, IngredientShelf shelf)
    {
        ArgumentNullException.ThrowIfNull(prep);
        ArgumentNullException.ThrowIfNull(shelf);
        // Each step goes one prep further from the start, so the first circle found is a shortest one.
        var reached = new Dictionary<Slug, Slug>();
        var waiting = new Queue<Ingredient>([prep]);
        while (waiting.TryDequeue(out var made))
        {
            foreach (var input in made.Prep?.Inputs ?? [])
            {
                if (input.Ingredient == prep.Slug)
                    return Circle(made.Slug);
                if (shelf.TryGet(input.Ingredient, out var from) && from.Prep is not null && reached.TryAdd(from.Slug, made.Slug))
                    waiting.Enqueue(from);
            }
        }

        return [];

        IReadOnlyList<Ingredient> Circle(Slug last)
        {
            var back = new List<Ingredient> { prep };
            for (var slug = last; slug != prep.Slug; slug = reached[slug])
                back.Add(shelf[slug]!);
            back.Add(prep);
            back.Reverse();
            return back;
        }
    }
}
