using Barshow.Engine.Episodes;
using Barshow.Engine.Featured;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures;
using Barshow.Engine.Planning;
using Barshow.Engine.Planning.Baskets;
using Barshow.Engine.Planning.Bottles;
using Barshow.Engine.Planning.Claims;
using Barshow.Engine.Planning.Pool;
using Barshow.Engine.Specs.Analysis;

namespace Barshow.Web.Desk;

/// <summary>What was computed of one state of an episode.</summary>
public sealed record EpisodeWork
{
    public required IReadOnlyList<DrinkAnalysis> Analyses { get; init; }
    public required Basket ViewerBasket { get; init; }
    public required Basket ShootBasket { get; init; }
    public required BasketLadder Ladder { get; init; }
    public required BottleBudget Bottle { get; init; }
    public required ClaimReport Claims { get; init; }
    public required PoolGrid Pool { get; init; }
    public required IReadOnlyDictionary<Stage, IReadOnlyList<Finding>> ByStage { get; init; }

    public IReadOnlyList<Finding> At(Stage stage) => ByStage.TryGetValue(stage, out var found) ? found : [];

    public static EpisodeWork Of(Episode episode, Bar bar, FeaturedLog log)
    {
        _ = log;
        var setting = new AnalysisSetting(bar.Ingredients, bar.Kit) { Convention = episode.Convention, Sizes = bar.House.BarSizes };
        var analyses = episode.Lineup.Select(drink => DrinkAnalyser.Analyse(drink.Spec, setting)).ToList();
        var viewer = BasketPlanner.Plan(episode, bar, DemandFor.Viewer);
        var shoot = BasketPlanner.Plan(episode, bar, DemandFor.Shoot);
        var bottle = BottleBudgetPlanner.Plan(episode, bar);
        var claims = ClaimChecker.Check(episode, bar, viewer, bottle);
        var callouts = episode.Lineup.SelectMany(drink => drink.Spec.Lines.Where(line => line.Planned is not null).SelectMany(line =>
            CalloutCheck.Findings(Callout.Of(line.Planned!, episode.Convention, line.WrittenBeside, bar.House.BarSizes), line.Name).Select(finding => new Finding(finding.Kind, finding.Subject, finding.Message, finding.Remedy) { Drink = drink.Name, Ingredient = line.Name, Said = finding.Said, Expected = finding.Expected })));
        return new()
        {
            Analyses = analyses,
            ViewerBasket = viewer,
            ShootBasket = shoot,
            Ladder = BasketLadder.Of(viewer, [.. episode.Lineup.Select(drink => drink.Spec.Slug)]),
            Bottle = bottle,
            Claims = claims,
            Pool = PoolGrid.Of(episode, viewer),
            ByStage = new Dictionary<Stage, IReadOnlyList<Finding>>
            {
                [Stage.Plan] = [.. callouts, .. analyses.SelectMany(analysis => analysis.Findings), .. claims.Findings, .. bottle.Findings],
                [Stage.Stock] = [.. shoot.Findings],
            },
        };
    }
}
