using Barshow.Engine.Episodes;

namespace Barshow.Data.Rows;

/// <summary>A saved episode.</summary>
public sealed class EpisodeRow : Row<Episode>
{
    /// <summary>Its number in the channel's count.</summary>
    public int? Number { get; private set; }

    /// <summary>The day of the shoot.</summary>
    public DateOnly? ShootDate { get; private set; }

    /// <summary>The day it is published.</summary>
    public DateOnly? PublishDate { get; private set; }

    /// <summary>How many drinks are in the lineup.</summary>
    public int DrinkCount { get; private set; }

    /// <summary>The bottle it is about, as the user named it; empty for none.</summary>
    public string Bottle { get; private set; } = "";

    /// <inheritdoc/>
    public override string SlugOf(Episode document) => document.Slug.Text;

    /// <inheritdoc/>
    protected override string NameOf(Episode document) => document.Title;

    /// <inheritdoc/>
    protected override void Describe(Episode document)
    {
        Number = document.Number;
        ShootDate = document.ShootDate;
        PublishDate = document.PublishDate;
        DrinkCount = document.Lineup.Count;
        Bottle = document.Bottle?.Name ?? "";
    }
}
