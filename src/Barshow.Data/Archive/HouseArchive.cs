using Barshow.Data.Rows;
using Barshow.Engine.Episodes;
using Barshow.Engine.Featured;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Specs;

namespace Barshow.Data.Archive;

/// <summary>Everything an archive holds, read and checked.</summary>
public sealed record HouseArchive
{
    /// <summary>The settings; one or none.</summary>
    public ArchiveSection<House> House { get; init; } = new([], []);

    /// <summary>Glasses, jiggers and tools; one or none.</summary>
    public ArchiveSection<BarKit> Kit { get; init; } = new([], []);

    /// <summary>Ingredients.</summary>
    public ArchiveSection<Ingredient> Ingredients { get; init; } = new([], []);

    /// <summary>Drinks of the library.</summary>
    public ArchiveSection<Spec> Drinks { get; init; } = new([], []);

    /// <summary>Episodes.</summary>
    public ArchiveSection<Episode> Episodes { get; init; } = new([], []);

    /// <summary>The featured log.</summary>
    public ArchiveSection<Feature> Featured { get; init; } = new([], []);

    /// <summary>Who saved what and when.</summary>
    public IReadOnlyList<Signature> Signatures { get; init; } = [];

    /// <summary>The change history, oldest first.</summary>
    public IReadOnlyList<ArchivedChange> History { get; init; } = [];

    /// <summary>This archive with another laid over it: what both have is taken from the other.</summary>
    public HouseArchive With(HouseArchive over)
    {
        ArgumentNullException.ThrowIfNull(over);
        return new()
        {
            House = Join(House, over.House, new HouseRow()),
            Kit = Join(Kit, over.Kit, new KitRow()),
            Ingredients = Join(Ingredients, over.Ingredients, new IngredientRow()),
            Drinks = Join(Drinks, over.Drinks, new DrinkRow()),
            Episodes = Join(Episodes, over.Episodes, new EpisodeRow()),
            Featured = Join(Featured, over.Featured, new FeatureRow()),
            Signatures = [.. Signatures, .. over.Signatures],
            History = [.. History, .. over.History],
        };
    }

    private static ArchiveSection<T> Join<T>(ArchiveSection<T> under, ArchiveSection<T> over, Row<T> row)
        where T : class
    {
        var replaced = over.Values.Select(row.SlugOf).ToHashSet();
        return new([.. under.Values.Where(value => !replaced.Contains(row.SlugOf(value))), .. over.Values], [.. under.Bin, .. over.Bin]);
    }
}

/// <summary>All things of one sort.</summary>
/// <param name="Values">Those in use, each under a name of its own.</param>
/// <param name="Bin">Those in the bin.</param>
public sealed record ArchiveSection<T>(IReadOnlyList<T> Values, IReadOnlyList<BinnedThing<T>> Bin)
    where T : class;

/// <summary>A thing in the bin.</summary>
/// <param name="Value">The thing.</param>
/// <param name="Version">Counts its saves from 1.</param>
/// <param name="DeletedAt">When it went to the bin.</param>
/// <param name="DeletedBy">Who put it there; empty when nobody signed.</param>
public sealed record BinnedThing<T>(T Value, int Version, DateTimeOffset DeletedAt, string DeletedBy)
    where T : class;

/// <summary>Who saved a thing and when.</summary>
/// <param name="Kind">What sort of thing, by the name of its entry: "drinks".</param>
/// <param name="Slug">The name it is kept under.</param>
/// <param name="Version">Counts its saves from 1.</param>
/// <param name="At">When it was saved.</param>
/// <param name="By">Who saved it; empty when nobody signed.</param>
public sealed record Signature(string Kind, string Slug, int Version, DateTimeOffset At, string By);

/// <summary>One line of the change history.</summary>
/// <param name="Kind">What sort of thing, by the name of its entry: "drinks".</param>
/// <param name="Slug">The name it is kept under.</param>
/// <param name="Version">The version that came of it.</param>
/// <param name="Deed">What was done.</param>
/// <param name="At">When.</param>
/// <param name="By">By whom; empty when nobody signed.</param>
/// <param name="Before">The thing as it was before; null when it is new or did not change.</param>
public sealed record ArchivedChange(string Kind, string Slug, int Version, Deed Deed, DateTimeOffset At, string By, System.Text.Json.JsonElement? Before);
