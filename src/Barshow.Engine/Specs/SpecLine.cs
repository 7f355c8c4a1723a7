using Barshow.Engine.Measures;
using Barshow.Engine.Names;

namespace Barshow.Engine.Specs;

/// <summary>Which of the layers of an amount a figure belongs to.</summary>
public enum AmountLayer
{
    /// <summary>As the cited recipe has it.</summary>
    Source,

    /// <summary>As this presenter makes it.</summary>
    Library,

    /// <summary>As decided for this film.</summary>
    Episode,

    /// <summary>As logged at the bench.</summary>
    Poured,

    /// <summary>As published.</summary>
    Published,
}

/// <summary>One layer of an amount with its reason.</summary>
/// <param name="Layer">Which layer.</param>
/// <param name="Measure">The amount there.</param>
/// <param name="Reason">Why it differs from the layer below; null for the first.</param>
public sealed record LayeredAmount(AmountLayer Layer, Measure Measure, string? Reason = null);

/// <summary>What is done with an ingredient.</summary>
public enum LineUse
{
    /// <summary>Goes into the tin, the mixing glass or the glass with the rest.</summary>
    Mixed,

    /// <summary>Muddled first.</summary>
    Muddled,

    /// <summary>Tops the drink up when it is made; never diluted in the tin.</summary>
    Topped,

    /// <summary>Floated on the drink when it is made.</summary>
    Floated,

    /// <summary>Rinses the glass and is mostly thrown out.</summary>
    Rinsed,

    /// <summary>Goes on the rim.</summary>
    Rimmed,
}

/// <summary>One line of a spec: a measure, an ingredient, and how it is cut or treated.</summary>
public sealed record SpecLine
{
    /// <summary>The ingredient as the user named it.</summary>
    public required string Name { get; init; }

    /// <summary>The ingredient it is; empty when the house does not know it.</summary>
    public Slug Ingredient { get; init; }

    /// <summary>The layers of the amount, lowest first, at most one of each; empty when the line has no amount.</summary>
    public IReadOnlyList<LayeredAmount> Amounts { get; init; } = [];

    /// <summary>The other side of a dual amount as it was written; null when only one unit was given.</summary>
    public Measure? WrittenBeside { get; init; }

    /// <summary>How it is cut or treated.</summary>
    public string? Note { get; init; }

    /// <summary>Whether it may be left out.</summary>
    public bool Optional { get; init; }

    /// <summary>What is done with it.</summary>
    public LineUse Use { get; init; }

    /// <summary>The line as it was typed.</summary>
    public string Text { get; init; } = "";

    /// <summary>The line of the brief it came from, counted from 1; null when it came from elsewhere.</summary>
    public int? BriefLine { get; init; }

    /// <summary>The amount that holds up to and including a layer: the highest layer that is not above it.</summary>
    public Measure? At(AmountLayer layer) => Amounts.LastOrDefault(amount => amount.Layer <= layer)?.Measure ?? (Amounts.Count > 0 ? Amounts[0].Measure : null);

    /// <summary>The amount to plan and film with: the episode's, else the library's, else the source's.</summary>
    public Measure? Planned => At(AmountLayer.Episode);

    /// <summary>The amount to publish: an accepted poured amount wins over the episode's, the episode's over the library's.</summary>
    public Measure? ToPublish => At(AmountLayer.Published);

    /// <summary>The same line with a layer set, its place among the layers kept in order.</summary>
    public SpecLine With(AmountLayer layer, Measure measure, string? reason) => this with
    {
        Amounts = [.. Amounts.Where(amount => amount.Layer != layer).Append(new LayeredAmount(layer, measure, reason)).OrderBy(amount => amount.Layer)],
    };
}
