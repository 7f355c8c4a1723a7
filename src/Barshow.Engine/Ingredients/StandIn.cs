using Barshow.Engine.Names;

namespace Barshow.Engine.Ingredients;

/// <summary>What will do instead of an ingredient.</summary>
/// <param name="Ingredient">The ingredient that will do.</param>
/// <param name="Ratio">Millilitres of it for one millilitre, above 0.</param>
/// <param name="Note">What changes: "a little sweeter".</param>
public sealed record StandIn(Slug Ingredient, double Ratio = 1, string? Note = null);

/// <summary>What must not be used instead, and why.</summary>
/// <param name="What">In plain words: "bottled lime cordial".</param>
/// <param name="Why">The reason, a sentence.</param>
public sealed record NotInstead(string What, string Why);

/// <summary>What an ingredient is called elsewhere.</summary>
/// <param name="Region">Region code: "US", "UK", "AU".</param>
/// <param name="Name">The name there.</param>
/// <param name="Warning">Set when the name means something else or something alcoholic elsewhere.</param>
public sealed record RegionalName(string Region, string Name, string? Warning = null);

/// <summary>A question viewers keep asking about an ingredient, with the answer to print.</summary>
/// <param name="Question">The question.</param>
/// <param name="Answer">The answer, a sentence or two.</param>
public sealed record ViewerQuestion(string Question, string Answer);
