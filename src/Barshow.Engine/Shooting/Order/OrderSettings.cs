using Barshow.Engine.Names;

namespace Barshow.Engine.Shooting.Order;

/// <summary>What a good shoot order is good at. They are met in turn: a later one never worsens an earlier one.</summary>
public enum OrderAim
{
    /// <summary>The fewest minutes lost to changes, wash-ups, further batches and waiting. Breaks and the meal are owed, not lost: no order is bent to save one.</summary>
    ShortDay,

    /// <summary>The most minutes in hand in the tightest fresh window, an hour at most.</summary>
    FreshnessInHand,

    /// <summary>Light to strong, dry to sweet, salt and chilli late, from each drink to the next.</summary>
    KindPalate,

    /// <summary>As near to the viewer order as the rest allows.</summary>
    NearViewerOrder,
}

/// <summary>What the user decides of a running order.</summary>
public sealed record OrderSettings
{
    /// <summary>How long things take.</summary>
    public ShootingPace Pace { get; init; } = ShootingPace.Default;

    /// <summary>The aims, most important first.</summary>
    public IReadOnlyList<OrderAim> Aims { get; init; } = [OrderAim.ShortDay, OrderAim.KindPalate, OrderAim.FreshnessInHand, OrderAim.NearViewerOrder];

    /// <summary>Whether close-ups are filmed with each drink.</summary>
    public bool CloseUps { get; init; } = true;

    /// <summary>When the day must end, from the call; null when it may run on.</summary>
    public TimeSpan? WrapBy { get; init; }

    /// <summary>Whether house preps and juices may be made again during the day.</summary>
    public bool FurtherBatches { get; init; } = true;

    /// <summary>When the first batch of a prep is ready, from the call, where it cannot be ready just before it; later than that counts as late.</summary>
    public IReadOnlyDictionary<Slug, TimeSpan> ReadyAt { get; init; } = new Dictionary<Slug, TimeSpan>();

    /// <summary>What of the day is over; null before the call.</summary>
    public DaySoFar? SoFar { get; init; }

    /// <summary>How much work a level may take before it stops unproven, in the solver's own seconds, which do not depend on the machine.</summary>
    public double EffortPerLevel { get; init; } = 6;

    /// <summary>Rules that are not applied at all. For trying what a rule costs.</summary>
    public IReadOnlySet<OrderRule> Without { get; init; } = new HashSet<OrderRule>();
}

/// <summary>What of a shoot day is over when the rest is planned anew.</summary>
public sealed record DaySoFar
{
    /// <summary>The time from the call at which the rest begins.</summary>
    public required TimeSpan Now { get; init; }

    /// <summary>What is filmed, in the order it was.</summary>
    public IReadOnlyList<FilmedDrink> Filmed { get; init; } = [];

    /// <summary>When the last break or meal ended; null when there was none.</summary>
    public TimeSpan? LastBreakEnded { get; init; }

    /// <summary>When the last wash-up ended; null when there was none.</summary>
    public TimeSpan? LastWashUpEnded { get; init; }

    /// <summary>Whether the meal is over.</summary>
    public bool MealOver { get; init; }
}

/// <summary>A drink that is filmed already.</summary>
/// <param name="Drink">Which.</param>
/// <param name="Start">When its first take began, from the call.</param>
/// <param name="End">When its last block ended, from the call.</param>
public sealed record FilmedDrink(Slug Drink, TimeSpan Start, TimeSpan End);
