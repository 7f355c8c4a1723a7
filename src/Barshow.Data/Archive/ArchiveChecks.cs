using System.Globalization;
using System.Text.Json;
using Barshow.Data.Json;
using Barshow.Data.Rows;
using Barshow.Engine.Episodes;
using Barshow.Engine.Featured;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Specs;

namespace Barshow.Data.Archive;

/// <summary>Looks for values that are good JSON and no good bar: a name used twice, a glass that holds nothing, a nought hidden in a list.</summary>
internal static class ArchiveChecks
{
    /// <exception cref="ArchiveRefusal">Something is wrong.</exception>
    public static void Check(HouseArchive archive)
    {
        Section(ArchiveFormat.House, archive.House, new HouseRow(), Check);
        Section(ArchiveFormat.Kit, archive.Kit, new KitRow(), Check);
        Section(ArchiveFormat.Ingredients, archive.Ingredients, new IngredientRow(), Check);
        Section(ArchiveFormat.Drinks, archive.Drinks, new DrinkRow(), Check);
        Section(ArchiveFormat.Episodes, archive.Episodes, new EpisodeRow(), Check);
        Section(ArchiveFormat.Featured, archive.Featured, new FeatureRow(), Check);
        foreach (var signature in archive.Signatures)
            CheckLine(ArchiveFormat.Saved, signature.Kind, signature.Slug, signature.Version);
        foreach (var line in archive.History)
        {
            CheckLine(ArchiveFormat.History, line.Kind, line.Slug, line.Version);
            if (line.Before is { } before)
                CheckBefore(line, before);
        }
    }

    private static void Section<T>(string kind, ArchiveSection<T> section, Row<T> row, Action<Where, T> check)
        where T : class
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var value in section.Values)
        {
            var where = new Where(kind, value is null ? "" : row.SlugOf(value));
            Each(where, value, check);
            where.Demand(seen.Add(where.Slug), "is there twice");
        }

        foreach (var binned in section.Bin)
        {
            var where = new Where(ArchiveFormat.Bin, binned?.Value is null ? "" : row.SlugOf(binned.Value));
            Each(where, binned?.Value, check);
            where.Demand(binned!.Version >= 1, "has a version below 1");
        }
    }

    private static void Each<T>(Where where, T? value, Action<Where, T> check)
        where T : class
    {
        where.Demand(value is not null && where.Slug.Length > 0, "holds a thing without a name");
        Holes.Check(where, value!);
        check(where, value!);
    }

    private static void Check(Where where, House house)
    {
        where.Demand(house.SpillShare is >= 0 and <= 1, "has a spill share outside 0 to 1");
        where.Demand(house.RehearsalsPerDrink is >= 0 and <= 100, "rehearses a drink fewer than 0 or more than 100 times");
        where.Demand(house.RemakeMonths is >= 0 and <= 1200, "waits fewer than 0 or more than 1200 months for a remake");
        where.Demand(house.Hands is >= 1 and <= 100, "has fewer than 1 or more than 100 pairs of hands");
        where.Demand(house.Limits is { DescriptionBytes: > 0, TitleCharacters: > 0, FewestChapters: > 0, ShortestChapterSeconds: > 0 }, "has a publishing limit below 1");
        var sizes = house.BarSizes;
        where.Demand(new[] { sizes.Dash, sizes.Barspoon, sizes.Splash, sizes.Drop }.All(size => size > 0), "has a dash, barspoon, splash or drop that holds nothing");
    }

    private static void Check(Where where, BarKit kit)
    {
        foreach (var glass in kit.Glasses)
        {
            var its = where with { Slug = glass.Slug.Text };
            its.Demand(!glass.Slug.IsEmpty, "holds a glass without a name");
            its.Demand(glass.BrimfulMillilitres is > 0 and <= 100_000, "holds 0 ml or less, or more than 100 litres");
            its.Demand(glass.Count >= 0, "is there fewer than 0 times");
            its.Demand(glass.UsualWashLine is >= 0 and <= 1, "has a usual wash line outside 0 to 1");
            its.Demand(glass.Profile is null || Rises(glass.Profile), "has a profile that does not rise from the floor up");
        }

        foreach (var twice in kit.Glasses.Select(glass => glass.Slug.Text).Concat(kit.Tools.Select(tool => "tool " + tool.Slug)).GroupBy(slug => slug).Where(group => group.Count() > 1))
            (where with { Slug = twice.Key }).Demand(false, "is there twice");
    }

    private static bool Rises(GlassProfile profile) =>
        profile.Points.All(point => point is { Height: >= 0, Radius: >= 0 }) && profile.Points.Zip(profile.Points.Skip(1)).All(pair => pair.First.Height <= pair.Second.Height);

    private static void Check(Where where, Ingredient ingredient)
    {
        var inside = ingredient.Composition;
        where.Demand(inside.SugarGramsPer100Millilitres is null or (>= 0 and <= 150), "has sugar outside 0 to 150 g in 100 ml");
        where.Demand(inside.AcidGramsPer100Millilitres is null or (>= 0 and <= 100), "has acid outside 0 to 100 g in 100 ml");
        where.Demand(inside.DensityGramsPerMillilitre is null or (> 0 and <= 25), "has a density outside 0 to 25 g in 1 ml");
        where.Demand(ingredient.Produce is null or { JuiceMillilitres: >= 0, MuddledShare: >= 0 and <= 1 }, "gives less than nothing when pressed or muddled");
        where.Demand(ingredient.Produce?.Cuts.All(cut => cut.PerPiece >= 1) ?? true, "gives fewer than 1 piece of a cut");
        where.Demand(ingredient.Packs.All(pack => pack.Price is null or >= 0), "has a price below 0");
        where.Demand(ingredient.StandIns.All(standIn => standIn.Ratio > 0), "has a stand-in of which 0 ml will do");
        where.Demand(ingredient.Fresh is null || (ingredient.Fresh.Ready >= TimeSpan.Zero && ingredient.Fresh.Best >= TimeSpan.Zero && ingredient.Fresh.Keep >= ingredient.Fresh.Best), "keeps less long than it is at its best");
        where.Demand(ingredient.DashMillilitres is null || ingredient.DashMillilitres > 0, "has a dash that holds nothing");
        where.Demand(ingredient.Prep is null || ingredient.Prep.HandsOn >= TimeSpan.Zero, "takes less than no time to make");
    }

    private static void Check(Where where, Spec spec)
    {
        where.Demand(spec.Serve.WashLine is null or (>= 0 and <= 1), "has a wash line outside 0 to 1");
        where.Demand(spec.Method is null || (spec.Method.Seconds is null or >= 0 && spec.Method.Pours is null or >= 0), "is made in less than 0 seconds or pours");
        foreach (var line in spec.Lines)
            where.Demand(line.Amounts.Zip(line.Amounts.Skip(1)).All(pair => pair.First.Layer < pair.Second.Layer), $"has layers out of order in the line \"{line.Name}\"");
    }

    private static void Check(Where where, Episode episode)
    {
        where.Demand(episode.Takes is >= 1 and <= 1000, "has fewer than 1 or more than 1000 takes");
        where.Demand(episode.FilmLengthSeconds is null or >= 0, "has a film shorter than 0 seconds");
        foreach (var drink in episode.Lineup)
        {
            where.Demand(drink.Takes is null or (>= 1 and <= 1000), $"has fewer than 1 or more than 1000 takes of \"{drink.Name}\"");
            where.Demand(drink is { TastedSwapOuts: >= 0, UntastedSwapOuts: >= 0 }, $"has fewer than 0 swap-outs of \"{drink.Name}\"");
            where.Demand(drink.FilmSeconds is null or >= 0, $"starts \"{drink.Name}\" before the film");
            where.Demand(!drink.Spec.Slug.IsEmpty, "has a drink without a name");
            Check(where, drink.Spec);
        }
    }

    private static void Check(Where where, Feature feature)
    {
        where.Demand(!feature.Spec.Slug.IsEmpty, "shows a drink without a name");
        Check(where, feature.Spec);
    }

    private static void CheckLine(string entry, string kind, string slug, int version)
    {
        var where = new Where(entry, slug);
        where.Demand(ArchiveFormat.Kinds.Contains(kind), $"is of the kind \"{kind}\", which is none");
        where.Demand(slug.Length is > 0 and <= 300, "has no name, or one of more than 300 characters");
        where.Demand(version >= 1, "has a version below 1");
    }

    private static void CheckBefore(ArchivedChange line, JsonElement before)
    {
        var type = line.Kind switch
        {
            ArchiveFormat.House => typeof(House),
            ArchiveFormat.Kit => typeof(BarKit),
            ArchiveFormat.Ingredients => typeof(Ingredient),
            ArchiveFormat.Drinks => typeof(Spec),
            ArchiveFormat.Episodes => typeof(Episode),
            _ => typeof(Feature),
        };
        try
        {
            before.Deserialize(type, DomainJson.Compact);
        }
        catch (JsonException)
        {
            new Where(ArchiveFormat.History, line.Slug).Demand(false, string.Create(CultureInfo.InvariantCulture, $"cannot be read as it was before version {line.Version}"));
        }
    }

    /// <summary>A place in the archive, to name in a refusal.</summary>
    internal sealed record Where(string Kind, string Slug)
    {
        public void Demand(bool holds, string wrong)
        {
            if (!holds)
                throw new ArchiveRefusal(Slug.Length == 0 ? $"The archive's {ArchiveFormat.Entry(Kind)} {wrong}." : $"The archive's {ArchiveFormat.Entry(Kind)} has a bad value: \"{Slug}\" {wrong}.");
        }
    }
}
