using System.Globalization;
using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Publishing.Cautions;
using Barshow.Engine.Shooting.Mise;
using Barshow.Engine.Shooting.Order;
using Barshow.Engine.Specs.Cautions;

namespace Barshow.Engine.Publishing.CallSheet;

/// <summary>A row of the day on the call sheet.</summary>
/// <param name="Start">When it starts.</param>
/// <param name="End">When it ends.</param>
/// <param name="What">What is filmed or done.</param>
/// <param name="With">Station, glass and takes; empty for none.</param>
/// <param name="Main">Whether it is a drink or a block that everybody waits for.</param>
public sealed record CallSheetRow(string Start, string End, string What, string With, bool Main);

/// <summary>What a call sheet says, whatever it is printed on.</summary>
public sealed record CallSheetContent
{
    /// <summary>The episode's title.</summary>
    public required string Title { get; init; }

    /// <summary>The house.</summary>
    public required string House { get; init; }

    /// <summary>Facts of the day, name and value: date, call, wrap, takes, bottle.</summary>
    public IReadOnlyList<(string Name, string Value)> Facts { get; init; } = [];

    /// <summary>The day.</summary>
    public IReadOnlyList<CallSheetRow> Day { get; init; } = [];

    /// <summary>What must be said and what must not, a line each.</summary>
    public IReadOnlyList<string> Sponsor { get; init; } = [];

    /// <summary>What is done during the shoot and when the preparation starts, a line each.</summary>
    public IReadOnlyList<string> Mise { get; init; } = [];

    /// <summary>Allergens by drink, a line each.</summary>
    public IReadOnlyList<string> Allergens { get; init; } = [];

    /// <summary>Hazards and the rules of tasting, a line each.</summary>
    public IReadOnlyList<string> Safety { get; init; } = [];

    /// <summary>The content of an episode's call sheet.</summary>
    public static CallSheetContent Of(EpisodeResults results)
    {
        ArgumentNullException.ThrowIfNull(results);
        return new()
        {
            Title = results.Episode.Title,
            House = results.Bar.House.Name,
            Facts = [.. FactsOf(results)],
            Day = [.. DayOf(results)],
            Sponsor = [.. SponsorOf(results.Episode)],
            Mise = [.. MiseOf(results)],
            Allergens = [.. AllergensOf(results)],
            Safety = [.. SafetyOf(results)],
        };
    }

    private static IEnumerable<(string, string)> FactsOf(EpisodeResults results)
    {
        var episode = results.Episode;
        yield return ("Shoot", episode.ShootDate is { } day ? day.ToString("dddd d MMMM yyyy", CultureInfo.InvariantCulture) : "day not fixed");
        yield return ("Call", episode.CallTime is { } call
            ? $"{call.ToString("HH:mm", CultureInfo.InvariantCulture)} ({(episode.TimeZone.Length > 0 ? episode.TimeZone : results.Bar.House.TimeZone)})"
            : "not fixed; hours count from the call");
        if (results.Order is { Blocks.Count: > 0 } order)
            yield return ("Wrap", order.Clock.Say(order.Wrap));
        yield return ("Drinks", string.Create(CultureInfo.InvariantCulture, $"{episode.Lineup.Count}, {episode.Lineup.Sum(episode.TakesOf)} takes"));
        if (episode.Bottle is { } bottle)
            yield return ("Bottle", bottle.Name + (bottle.Millilitres is { } size ? string.Create(CultureInfo.InvariantCulture, $", {size:0} ml") : ""));
    }

    // A row for each drink: its takes with what stands between them; resets and close-ups fold into it so that the day fits a page.
    private static IEnumerable<CallSheetRow> DayOf(EpisodeResults results)
    {
        if (results.Order is not { } order)
            yield break;
        var at = 0;
        while (at < order.Blocks.Count)
        {
            var block = order.Blocks[at];
            var next = at + 1;
            if (!block.Drink.IsEmpty)
                while (next < order.Blocks.Count && order.Blocks[next].Drink == block.Drink)
                    next++;
            yield return Row([.. order.Blocks.Skip(at).Take(next - at)], order, results);
            at = next;
        }
    }

    private static CallSheetRow Row(List<Block> blocks, RunningOrder order, EpisodeResults results)
    {
        var (start, end) = (order.Clock.Say(blocks[0].Start), order.Clock.Say(blocks.Max(block => block.End)));
        var first = blocks[0];
        if (first.Drink.IsEmpty || !blocks.Exists(block => block.Kind is BlockKind.Take))
            return new(start, end, string.Join(", ", blocks.Select(block => block.Name).Distinct()), first.Beside ? "on the other pair of hands" : "", first.Kind is BlockKind.Meal or BlockKind.Break or BlockKind.Intro or BlockKind.Outro or BlockKind.SponsorRead);
        var takes = blocks.Count(block => block.Kind is BlockKind.Take);
        var setUp = blocks.First(block => block.Kind is BlockKind.Take).SetUp;
        var with = new[]
        {
            string.Create(CultureInfo.InvariantCulture, $"{takes} take{(takes == 1 ? "" : "s")}"),
            setUp?.Station ?? "",
            setUp is { Glass.IsEmpty: false } ? ServeWords.Name(setUp.Glass, results.Bar.Kit) : "",
            setUp?.Backdrop ?? "",
        };
        return new(start, end, results.NameOf(first.Drink), string.Join(", ", with.Where(words => words.Length > 0)), true);
    }

    private static IEnumerable<string> SponsorOf(Episode episode)
    {
        var sponsor = episode.Sponsor;
        if (sponsor.IsSponsored)
            yield return $"{sponsor.Sponsor} pays. Approval: {ApprovalWords(sponsor.Approval)}.";
        if (sponsor.Disclosure.Length > 0)
            yield return $"Say{(sponsor.DisclosureBySeconds is { } latest ? string.Create(CultureInfo.InvariantCulture, $" within {latest} s of film") : " within the first half minute")}: \"{sponsor.Disclosure}\"";
        foreach (var point in sponsor.MustSay)
            yield return $"Must be said: {point}";
        if (sponsor.Avoid.Count > 0)
            yield return $"Never say: {string.Join("; ", sponsor.Avoid)}";
        foreach (var gift in episode.Gifts)
            yield return $"Gift, to be told on camera: {gift}";
        if (!sponsor.IsSponsored && sponsor.Disclosure.Length == 0 && episode.Gifts.Count == 0)
            yield return "No sponsor and no gifts are noted.";
    }

    private static string ApprovalWords(Approval approval) => approval switch
    {
        Approval.NotNeeded => "not needed",
        Approval.NotAsked => "not asked yet",
        Approval.Waiting => "waited for",
        Approval.Given => "given",
        Approval.Refused => "refused",
        _ => throw new ArgumentOutOfRangeException(nameof(approval), approval, "No such approval."),
    };

    private static IEnumerable<string> MiseOf(EpisodeResults results)
    {
        if (results.Mise is not { Tasks.Count: > 0 } mise)
            yield break;
        foreach (var session in mise.Tasks.GroupBy(task => task.Session).OrderBy(session => session.Key))
        {
            if (session.Key is not MiseSession.DuringTheShoot)
                yield return string.Create(CultureInfo.InvariantCulture, $"{Casing.AtStart(MiseWords.NameOf(session.Key))}: {session.Count()} task{(session.Count() == 1 ? "" : "s")}, from {mise.Clock.Say(session.Min(task => task.Start))} to {mise.Clock.Say(session.Max(task => task.End))} with {mise.Hands} pair{(mise.Hands == 1 ? "" : "s")} of hands; see the mise list.");
            else
                foreach (var task in session)
                    yield return $"{mise.Clock.Say(task.Start)} {task.Text}";
        }
    }

    private static IEnumerable<string> AllergensOf(EpisodeResults results)
    {
        var cautions = LineupCautions.Of(results.Episode, results.Bar.Ingredients);
        foreach (var drink in results.Episode.Lineup.Select(drink => drink.Name).Distinct())
        {
            var words = new[] { AllergenPresence.Contains, AllergenPresence.CheckLabel }
                .Select(presence => (presence, Names: cautions.Allergens.Where(entry => entry.Drink == drink && entry.Presence == presence).Select(entry => CautionWords.NameOf(entry.Allergen, entry.From, results.Bar.House.AudienceRegion)).Distinct().ToList()))
                .Where(group => group.Names.Count > 0)
                .Select(group => (group.presence is AllergenPresence.Contains ? "contains " : "check the label for ") + string.Join(", ", group.Names))
                .Concat(cautions.Unknown.Where(item => item.Drinks.Contains(drink)).Select(item => $"check the label of {item.Ingredient}"))
                .ToList();
            if (words.Count > 0)
                yield return $"{drink}: {string.Join("; ", words)}.";
        }

        yield return "Shared shakers and strainers carry allergens: wash between drinks. Nothing here is said to be free from any.";
    }

    private static IEnumerable<string> SafetyOf(EpisodeResults results)
    {
        foreach (var (hazard, drinks) in LineupCautions.Of(results.Episode, results.Bar.Ingredients).Hazards)
            yield return $"{CautionWords.NameOf(hazard)} ({string.Join(", ", drinks)}): {CautionWords.Of(hazard)}";
        // Common practice, no source: sips, never glasses; somebody who does not taste drives.
        yield return "Tasting is a sip and a spit, strongest last, with food and water. Nobody tastes who is under age, pregnant, driving or on medicines. No number here says that anyone may drive.";
        yield return "Follow local rules and licensed practice.";
    }
}
