using System.Globalization;
using Barshow.Engine.Featured;

namespace Barshow.Data.Rows;

/// <summary>A drink that was shown in an episode.</summary>
public sealed class FeatureRow : Row<Feature>
{
    /// <summary>When it was shown.</summary>
    public DateOnly Date { get; private set; }

    /// <summary>The episode it is kept under; empty for one from before.</summary>
    public string Episode { get; private set; } = "";

    /// <summary>The drink's slug.</summary>
    public string Drink { get; private set; } = "";

    /// <summary>The name a feature is kept under: its day, its episode and its drink.</summary>
    public static string KeyOf(Feature feature)
    {
        ArgumentNullException.ThrowIfNull(feature);
        var episode = feature.Episode.IsEmpty ? Engine.Names.Slug.Of(feature.EpisodeTitle) : feature.Episode;
        return string.Create(CultureInfo.InvariantCulture, $"{feature.Date:yyyy-MM-dd}/{episode}/{feature.Spec.Slug}");
    }

    /// <inheritdoc/>
    public override string SlugOf(Feature document) => KeyOf(document);

    /// <inheritdoc/>
    protected override string NameOf(Feature document) => document.Spec.Name;

    /// <inheritdoc/>
    protected override void Describe(Feature document)
    {
        Date = document.Date;
        Episode = document.Episode.Text;
        Drink = document.Spec.Slug.Text;
    }
}
