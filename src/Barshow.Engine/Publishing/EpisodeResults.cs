using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Names;
using Barshow.Engine.Planning.Baskets;
using Barshow.Engine.Shooting.Mise;
using Barshow.Engine.Shooting.Order;
using Barshow.Engine.Specs.Analysis;

namespace Barshow.Engine.Publishing;

/// <summary>An episode with all that was computed of it, as far as it was; what is missing here is missing in what is published.</summary>
public sealed record EpisodeResults
{
    /// <summary>The episode.</summary>
    public required Episode Episode { get; init; }

    /// <summary>The house.</summary>
    public required Bar Bar { get; init; }

    /// <summary>What each drink comes to, by its slug.</summary>
    public IReadOnlyDictionary<Slug, DrinkAnalysis> Analyses { get; init; } = new Dictionary<Slug, DrinkAnalysis>();

    /// <summary>What a viewer buys to make each drink once.</summary>
    public Basket? ViewerBasket { get; init; }

    /// <summary>What is ordered for the shoot.</summary>
    public Basket? ShootBasket { get; init; }

    /// <summary>How many drinks can be made with the best few things bought.</summary>
    public BasketLadder? Ladder { get; init; }

    /// <summary>The timed list of blocks of the shoot day; null when it was not planned.</summary>
    public RunningOrder? Order { get; init; }

    /// <summary>Everything to be ready before the first take; null when it was not planned.</summary>
    public MiseList? Mise { get; init; }

    /// <summary>Drinks of the lineup that were shown before.</summary>
    public IReadOnlyList<EarlierFeature> Earlier { get; init; } = [];

    /// <summary>Lines that were found said on film; empty until its captions are read.</summary>
    public IReadOnlyList<SaidLine> Said { get; init; } = [];

    /// <summary>What every other engine had to say.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>The name of a drink of the lineup; the slug's words for one that is not in it, empty for none.</summary>
    public string NameOf(Slug drink) => drink.IsEmpty ? "" : Episode.Lineup.FirstOrDefault(item => item.Spec.Slug == drink)?.Name ?? drink.Text.Replace('-', ' ');
}
