using Barshow.Engine.Measures;

namespace Barshow.Engine.Callouts;

/// <summary>What a film is checked against: its lineup as decided, and what its title, sponsor and description owe. What is null was not given, and is not checked.</summary>
public sealed record FilmSheet
{
    /// <summary>How ounces and millilitres are matched.</summary>
    public Convention Convention { get; init; }

    /// <summary>The title, whose countable promises are checked.</summary>
    public string? Title { get; init; }

    /// <summary>Millilitres in the featured bottle.</summary>
    public double? BottleMillilitres { get; init; }

    /// <summary>The featured ingredient; null to take the one that the title names, or the one poured most.</summary>
    public string? Featured { get; init; }

    /// <summary>The description block as it is to be published.</summary>
    public string? Description { get; init; }

    /// <summary>The disclosure as it must be said.</summary>
    public string? Disclosure { get; init; }

    /// <summary>By when the disclosure must be said, in seconds of film.</summary>
    public double? DisclosureBySeconds { get; init; }

    /// <summary>Points that must be said.</summary>
    public IReadOnlyList<string>? MustSay { get; init; }

    /// <summary>Words that must not be said.</summary>
    public IReadOnlyList<string>? Avoid { get; init; }

    /// <summary>What was given and must be told.</summary>
    public IReadOnlyList<string>? Gifts { get; init; }

    /// <summary>The lineup in viewer order.</summary>
    public IReadOnlyList<SheetDrink> Drinks { get; init; } = [];
}

/// <summary>A drink that a film teaches.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Lines">Its lines, in order.</param>
public sealed record SheetDrink(string Name, IReadOnlyList<SheetLine> Lines)
{
    /// <summary>Other names of it.</summary>
    public IReadOnlyList<string> Aliases { get; init; } = [];

    /// <summary>What else goes on it: its words are no stranger to the drink.</summary>
    public string Garnish { get; init; } = "";

    /// <summary>What must be cautioned of; null to tell it from the names of the lines.</summary>
    public IReadOnlyList<SheetCaution>? Cautions { get; init; }
}

/// <summary>A line of a drink.</summary>
/// <param name="Ingredient">What is poured, as the spec names it.</param>
/// <param name="Measure">How much; null when the spec leaves it out.</param>
public sealed record SheetLine(string Ingredient, Measure? Measure)
{
    /// <summary>Other names of the ingredient.</summary>
    public IReadOnlyList<string> Aliases { get; init; } = [];

    /// <summary>Whether the spec lets it be left out.</summary>
    public bool Optional { get; init; }
}

/// <summary>Something that can hurt and the words by which a caution of it is known.</summary>
/// <param name="Name">What it is, for a sentence: "raw egg".</param>
/// <param name="Words">Words one of which a caution holds, folded; a word ending in "-" stands for all that begin with it.</param>
public sealed record SheetCaution(string Name, IReadOnlyList<string> Words);
