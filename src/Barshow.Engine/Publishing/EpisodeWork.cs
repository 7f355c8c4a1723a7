using Barshow.Engine.Callouts;
using Barshow.Engine.Episodes;
using Barshow.Engine.Episodes.Briefs;
using Barshow.Engine.Featured;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Planning;
using Barshow.Engine.Planning.Baskets;
using Barshow.Engine.Planning.Bottles;
using Barshow.Engine.Planning.Claims;
using Barshow.Engine.Planning.Pool;
using Barshow.Engine.Publishing.Chapters;
using Barshow.Engine.Publishing.Descriptions;
using Barshow.Engine.Shooting;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Analysis;
using Barshow.Engine.Specs.Checks;

namespace Barshow.Engine.Publishing;

/// <summary>Everything that is computed of one state of an episode, with its findings under the stage where they can be mended.</summary>
public sealed record EpisodeWork
{
    /// <summary>The episode.</summary>
    public required Episode Episode { get; init; }

    /// <summary>What it is looked up in.</summary>
    public required Bar Bar { get; init; }

    /// <summary>What each drink comes to, in viewer order.</summary>
    public required IReadOnlyList<DrinkAnalysis> Analyses { get; init; }

    /// <summary>What a viewer buys to make each drink once.</summary>
    public required Basket ViewerBasket { get; init; }

    /// <summary>What is ordered for the shoot.</summary>
    public required Basket ShootBasket { get; init; }

    /// <summary>How many drinks the best one, two, three things bought make.</summary>
    public required BasketLadder Ladder { get; init; }

    /// <summary>The two budgets of the featured bottle; its levels follow the running order where there is one.</summary>
    public required BottleBudget Bottle { get; init; }

    /// <summary>The claims of the title.</summary>
    public required ClaimReport Claims { get; init; }

    /// <summary>Drinks by ingredients.</summary>
    public required PoolGrid Pool { get; init; }

    /// <summary>What was featured before.</summary>
    public required FeaturedCheck Featured { get; init; }

    /// <summary>The running order and the mise list; null until they are planned.</summary>
    public required ShootPlan? Shoot { get; init; }

    /// <summary>The chapters of the film.</summary>
    public required ChapterList Chapters { get; init; }

    /// <summary>The description block.</summary>
    public required DescriptionBlock Description { get; init; }

    /// <summary>What was said on film against the specs and the brief; null until there are captions.</summary>
    public EpisodeCheck? Said { get; init; }

    /// <summary>The findings of each stage, the worst first.</summary>
    public required IReadOnlyDictionary<Stage, IReadOnlyList<Finding>> ByStage { get; init; }

    /// <summary>All findings, in the order of the stages.</summary>
    public IReadOnlyList<Finding> Findings => [.. Enum.GetValues<Stage>().SelectMany(At)];

    /// <summary>The findings of a stage, the worst first.</summary>
    public IReadOnlyList<Finding> At(Stage stage) => ByStage.GetValueOrDefault(stage, []);

    /// <summary>What publishing is made from; publishing adds its own findings.</summary>
    public EpisodeResults Results => new()
    {
        Episode = Episode,
        Bar = Bar,
        Analyses = Episode.Lineup.Zip(Analyses).ToDictionary(pair => pair.First.Spec.Slug, pair => pair.Second),
        ViewerBasket = ViewerBasket,
        ShootBasket = ShootBasket,
        Ladder = Ladder,
        Order = Shoot?.Order,
        Mise = Shoot?.Mise,
        Earlier = Earlier(Featured),
        Said = [.. Lines(Said, Episode)],
        Findings = [.. Enum.GetValues<Stage>().Where(stage => stage != Stage.Publish).SelectMany(At), .. Said?.ToPickUp ?? []],
    };

    /// <summary>Runs every engine over an episode.</summary>
    /// <param name="episode">The episode; a drink stands in its lineup once.</param>
    /// <param name="bar">What it is looked up in.</param>
    /// <param name="log">What was featured.</param>
    /// <param name="today">Today at the house; an episode without dates is judged by it.</param>
    /// <param name="shoot">The running order and the mise list, where they were planned; that takes seconds and is a call of its own.</param>
    /// <param name="read">What the brief reader had to say, for an episode that was just read; null for what still stands of it.</param>
    public static EpisodeWork Of(Episode episode, Bar bar, FeaturedLog log, DateOnly today, ShootPlan? shoot = null, IReadOnlyList<Finding>? read = null)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(bar);
        ArgumentNullException.ThrowIfNull(log);
        bar = bar.For(episode);
        read ??= StandingFindings.Of(episode, bar);
        var setting = new AnalysisSetting(bar.Ingredients, bar.Kit) { Convention = episode.Convention, Sizes = bar.House.BarSizes };
        IReadOnlyList<DrinkAnalysis> analyses = [.. episode.Lineup.Select(drink => DrinkAnalyser.Analyse(drink.Spec, setting))];
        var viewer = BasketPlanner.Plan(episode, bar, DemandFor.Viewer);
        var order = BasketPlanner.Plan(episode, bar, DemandFor.Shoot);
        var bottle = BottleBudgetPlanner.Plan(episode, bar, shoot?.Order is { ShootOrder.Count: > 0 } day ? day.ShootOrder : null);
        var claims = ClaimChecker.Check(episode, bar, viewer, bottle);
        var featured = RemakeRule.Check(episode, bar, log, episode.PublishDate ?? episode.ShootDate ?? today);
        var chapters = ChapterPlanner.Plan(episode, bar.House.Limits);

        var work = new EpisodeWork
        {
            Episode = episode,
            Bar = bar,
            Analyses = analyses,
            ViewerBasket = viewer,
            ShootBasket = order,
            Ladder = BasketLadder.Of(viewer, [.. episode.Lineup.Select(drink => drink.Spec.Slug)]),
            Bottle = bottle,
            Claims = claims,
            Pool = PoolGrid.Of(episode, bar, viewer),
            Featured = featured,
            Shoot = shoot,
            Chapters = chapters,
            Description = new() { Text = "", Sections = [], LimitBytes = bar.House.Limits.DescriptionBytes },
            ByStage = new Dictionary<Stage, IReadOnlyList<Finding>>(),
        };
        work = work with { Description = DescriptionComposer.Compose(work.Results, chapters) };
        work = work with { Said = EpisodeCheck.Of(episode, bar.Ingredients, work.Description.Text) };
        return work with
        {
            ByStage = Sorted(
            [
                (Stage.Plan, read ?? []),
                (Stage.Plan, episode.Lineup.Count == 0 ? [NoDrinks(episode)] : []),
                (Stage.Plan, Callouts(episode, bar)),
                (Stage.Plan, analyses.SelectMany(analysis => analysis.Findings)),
                (Stage.Plan, Checked(episode, setting, read ?? [])),
                (Stage.Plan, claims.Findings),
                (Stage.Plan, bottle.Findings),
                (Stage.Plan, featured.Findings),
                (Stage.Stock, viewer.Findings),
                (Stage.Stock, order.Findings),
                (Stage.Prep, shoot?.Mise.Findings ?? []),
                (Stage.Shoot, shoot is null ? [] : shoot.Order.Findings.Concat(shoot.Viewers.Findings).Concat(shoot.Tasting.Findings)),
                (Stage.Publish, chapters.Findings),
                (Stage.Publish, work.Description.Findings),
                (Stage.Publish, work.Said?.Open ?? []),
            ]),
        };
    }

    // What the reader of a brief has said of a drink, with its line, need not be said again.
    private static IEnumerable<Finding> Checked(Episode episode, AnalysisSetting setting, IReadOnlyList<Finding> read) =>
        episode.Lineup.SelectMany(drink => SpecChecker.Check(drink.Spec, setting))
            .Where(finding => !read.Any(said => said.Kind == finding.Kind && said.Drink == finding.Drink));

    private static IEnumerable<Finding> Callouts(Episode episode, Bar bar) =>
        from drink in episode.Lineup
        from line in drink.Spec.Lines
        where line.Planned is not null
        let callout = Callout.Of(line.Planned!, episode.Convention, StillBeside(line), bar.House.BarSizes)
        from finding in CalloutCheck.Findings(callout, line.Name)
        select finding with { Drink = drink.Name, Ingredient = line.Name, Line = line.BriefLine };

    // What was written beside an amount stands beside that amount only: once another layer changed it, both sides are computed.
    private static Measure? StillBeside(SpecLine line) => line.Amounts.Any(amount => amount.Layer is AmountLayer.Episode) ? null : line.WrittenBeside;

    // The first time that a line is poured and said; what is repeated is not shown twice.
    private static IEnumerable<SaidLine> Lines(EpisodeCheck? said, Episode episode) =>
        from callout in said?.Report.Callouts ?? []
        where callout is { TimeSeconds: not null, EndSeconds: not null, Mention: false, Retracted: false, Repeat: false } && callout.EndSeconds > callout.TimeSeconds
        from place in callout.Places
        select new SaidLine(episode.Lineup[place.Drink].Spec.Slug, place.Line + 1, callout.TimeSeconds!.Value, callout.EndSeconds!.Value);

    private static Finding NoDrinks(Episode episode) => new(FindingCatalogue.NoDrinks, episode.Title,
        "The lineup has no drink yet.",
        "Add drinks from the library, or paste a brief.");

    private static IReadOnlyList<EarlierFeature> Earlier(FeaturedCheck featured) =>
        [.. featured.Matches.Where(match => match.Match.Kinship == Kinship.SameDrink)
            .Select(match => new EarlierFeature(match.Drink.Name, match.Match.Feature.EpisodeTitle, match.Match.Feature.Date, match.Match.Feature.Address))];

    // Two engines may meet the same trouble; it is said once, at the first stage it belongs to.
    private static Dictionary<Stage, IReadOnlyList<Finding>> Sorted(IEnumerable<(Stage Stage, IEnumerable<Finding> Findings)> found)
    {
        var said = new HashSet<(string, string, string)>();
        var all = found.SelectMany(group => group.Findings.Select(finding => (group.Stage, Finding: finding))).ToList();
        // An ingredient the house does not know is told with its line where there is one; what else follows from not knowing it is not told again.
        var unknown = all.Where(pair => pair.Finding.Kind == FindingCatalogue.IngredientUnknown).Select(pair => pair.Finding).ToList();
        var names = unknown.Select(finding => NameFolding.Fold(finding.Subject)).ToHashSet(StringComparer.Ordinal);
        var withLine = unknown.Where(finding => finding.Line is not null).Select(finding => NameFolding.Fold(finding.Subject)).ToHashSet(StringComparer.Ordinal);
        return all
            .Where(pair => pair.Finding.Kind != FindingCatalogue.CompositionUnknown || !names.Contains(NameFolding.Fold(pair.Finding.Ingredient ?? pair.Finding.Subject)))
            .Where(pair => pair.Finding.Kind != FindingCatalogue.IngredientUnknown || pair.Finding.Line is not null || !withLine.Contains(NameFolding.Fold(pair.Finding.Subject)))
            .Where(pair => said.Add((pair.Finding.Kind.Name, pair.Finding.Subject, pair.Finding.Message)))
            .GroupBy(pair => pair.Stage)
            .ToDictionary(group => group.Key, group => (IReadOnlyList<Finding>)[.. group.Select(pair => pair.Finding).OrderByDescending(finding => finding.Severity)]);
    }
}
