using System.Globalization;
using Barshow.Engine.Episodes;

namespace Barshow.Engine.Publishing;

/// <summary>The names of the files that are published for an episode.</summary>
public static class SiteFiles
{
    /// <summary>A name for each drink of a lineup; where two drinks have the same slug, the later ones get a number.</summary>
    public static IReadOnlyDictionary<LineupDrink, string> SlugsOf(Episode episode)
    {
        ArgumentNullException.ThrowIfNull(episode);
        var names = new Dictionary<LineupDrink, string>(ReferenceEqualityComparer.Instance);
        var taken = new HashSet<string>(StringComparer.Ordinal);
        foreach (var drink in episode.Lineup)
        {
            var slug = drink.Spec.Slug.IsEmpty ? Names.Slug.Of(drink.Name).Text : drink.Spec.Slug.Text;
            var name = slug;
            for (var i = 2; !taken.Add(name); i++)
                name = string.Create(CultureInfo.InvariantCulture, $"{slug}-{i}");
            names.TryAdd(drink, name);
        }

        return names;
    }

    /// <summary>The page of a drink, below the site's address.</summary>
    public static string Page(string drink) => drink + ".html";

    /// <summary>The picture of a drink, below the site's address.</summary>
    public static string Picture(string drink) => "pictures/" + drink + ".png";
}
