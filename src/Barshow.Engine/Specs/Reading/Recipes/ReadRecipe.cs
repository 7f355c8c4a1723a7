using Barshow.Engine.Findings;

namespace Barshow.Engine.Specs.Reading.Recipes;

/// <summary>What a line of a pasted recipe is.</summary>
public enum RecipeRole
{
    /// <summary>The drink's name.</summary>
    Name,

    /// <summary>A measure and an ingredient.</summary>
    Ingredient,

    /// <summary>Method, glass and garnish in short.</summary>
    Finish,

    /// <summary>A step, in sentences; method, glass and garnish are looked for in it.</summary>
    Step,

    /// <summary>Where the recipe comes from.</summary>
    Source,

    /// <summary>A note.</summary>
    Note,

    /// <summary>A heading, an advertisement, a count of servings: nothing of the spec.</summary>
    LeftOut,
}

/// <summary>One line of a pasted recipe.</summary>
/// <param name="Number">Its place in the text, counted from 1.</param>
/// <param name="Text">The line as it was pasted, without its bullet.</param>
/// <param name="Role">What it was taken for.</param>
/// <param name="Line">What it says as a line of the spec; null for other roles.</param>
/// <param name="Findings">What is to be said of it; places count within <paramref name="Text"/>.</param>
public sealed record RecipeLine(int Number, string Text, RecipeRole Role, SpecLine? Line, IReadOnlyList<Finding> Findings);

/// <summary>A pasted recipe, to be confirmed line by line.</summary>
/// <param name="Spec">The spec that its lines make; null while there is no ingredient line.</param>
/// <param name="Lines">Every line that holds text, in order.</param>
/// <param name="Findings">What is to be said of the whole: no name, no ingredient, too long.</param>
public sealed record ReadRecipe(Spec? Spec, IReadOnlyList<RecipeLine> Lines, IReadOnlyList<Finding> Findings);
