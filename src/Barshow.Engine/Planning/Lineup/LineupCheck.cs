using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;
using Barshow.Engine.Planning.Baskets;
using Barshow.Engine.Planning.Bottles;
using Barshow.Engine.Planning.Demand;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Planning.Lineup;

/// <summary>Checks a lineup again by plain counting that knows no solver and none of the planner's own figures.</summary>
public static class LineupCheck
{
    /// <summary>A finding for every requirement that the lineup does not keep; none when it keeps all.</summary>
    public static IReadOnlyList<Finding> Check(LineupQuestion question, IReadOnlyList<LineupPick> picks, Basket viewerBasket)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(picks);
        ArgumentNullException.ThrowIfNull(viewerBasket);
        Spec[] specs = [.. picks.Select(pick => pick.Spec)];
        return [.. Requirement.Of(question).Where(requirement => !Keeps(question, requirement, specs, viewerBasket)).Select(PlanningFindings.LineupBreaks)];
    }

    /// <summary>The episode a lineup would make, for the plain computations.</summary>
    internal static Episode EpisodeOf(LineupQuestion question, IReadOnlyList<Spec> specs) => new()
    {
        Slug = Slug.Of("lineup"),
        Title = "",
        Bottle = question.Bottle,
        Convention = question.Convention,
        Takes = Math.Max(1, question.Takes),
        Lineup = [.. specs.Select(spec => new LineupDrink { Spec = spec })],
    };

    private static bool Keeps(LineupQuestion question, Requirement requirement, IReadOnlyList<Spec> specs, Basket basket) => requirement.Kind switch
    {
        RequirementKind.Count => specs.Count == question.Count && specs.Select(spec => spec.Slug).Distinct().Count() == specs.Count,
        RequirementKind.Alike => AlikeDrinks.Pairs(specs, question.Bar.Ingredients).Count == 0,
        RequirementKind.MustHave => specs.Any(spec => spec.Slug == requirement.Subject),
        RequirementKind.LeaveOut => specs.All(spec => spec.Slug != requirement.Subject),
        RequirementKind.Without => basket.Items.Concat(basket.AtHome).All(item => item.Slug != requirement.Subject)
            && basket.Demand[requirement.Subject] is null && basket.Demand.Preps.All(prep => prep.Prep.Slug != requirement.Subject),
        RequirementKind.Bottle => specs.All(spec => basket.Demand[question.Bottle!.Ingredient]?.Drinks.Contains(spec.Slug) is true),
        RequirementKind.Fresh => specs.All(spec => !question.LastFeatured.TryGetValue(spec.Slug, out var last) || last.AddMonths(question.FreshMonths!.Value) <= question.Date),
        RequirementKind.FamilyCap => specs.Where(spec => spec.Family.Length > 0).GroupBy(spec => NameFolding.Fold(spec.Family)).All(family => family.Count() <= question.MostOfAFamily),
        RequirementKind.Floor => specs.Count(spec => CountsFor(requirement.Floor!, spec)) >= requirement.Floor!.AtLeast,
        RequirementKind.AlcoholFree => specs.Count(spec => !HoldsAlcohol(spec, question)) >= question.AlcoholFree,
        RequirementKind.Glasses => GlassesGoRound(question, specs),
        RequirementKind.Tools => specs.All(spec => HasTools(spec, question.Bar.Kit)),
        RequirementKind.BottleAtHome => BottleBudgetPlanner.Plan(EpisodeOf(question, specs), question.Bar).ViewerFits is not false,
        RequirementKind.BottlesOnSet => BottleBudgetPlanner.Plan(EpisodeOf(question, specs), question.Bar).Bottles <= question.ShootBottles,
        RequirementKind.Money => basket.Unpriced.Count > 0 || basket.Cost <= question.MostMoney,
        _ => basket.Things <= question.MostThings,
    };

    private static bool CountsFor(Floor floor, Spec spec)
    {
        string[] names = floor.On switch
        {
            FloorOn.Method => spec.Method is { } method ? [method.Name] : [],
            FloorOn.Glass => [spec.Serve.Glass.Text],
            FloorOn.Tag => [.. spec.Tags],
            _ => [spec.Family],
        };
        return names.Any(name => string.Equals(NameFolding.Fold(name), NameFolding.Fold(floor.Value), StringComparison.Ordinal));
    }

    private static bool HoldsAlcohol(Spec spec, LineupQuestion question) =>
        DemandPlanner.Of(EpisodeOf(question, [spec]), question.Bar, DemandFor.Viewer).Ingredients
            .Any(need => need.Ingredient is { } ingredient && (ingredient.Composition.Strength?.Percent > 0.5
                || (ingredient.Composition.Strength is null && ingredient.Kind is IngredientKind.Spirit or IngredientKind.Liqueur or IngredientKind.FortifiedWine or IngredientKind.Wine or IngredientKind.Beer or IngredientKind.Bitters)));

    // Every group of drinks must find room in the glasses that any of them may use (Hall's condition), and each drink a glass of the kit.
    private static bool GlassesGoRound(LineupQuestion question, IReadOnlyList<Spec> specs)
    {
        var served = specs.Where(spec => !spec.Serve.Glass.IsEmpty).Select(spec => AllowedGlasses(spec, question.Bar.Kit)).ToList();
        if (served.Any(glasses => glasses.Count == 0))
            return false;
        long Room(IEnumerable<Glass> glasses) => glasses.Sum(glass => (long)glass.Count * Math.Clamp(question.GlassRounds, 1, 100) / Math.Max(1, question.Takes));
        for (var group = 1L; served.Count <= 20 && group < 1L << served.Count; group++)
        {
            var members = served.Where((_, index) => (group >> index & 1) == 1).ToList();
            if (members.Count > Room(members.SelectMany(glasses => glasses).DistinctBy(glass => glass.Slug)))
                return false;
        }

        return true;
    }

    private static List<Glass> AllowedGlasses(Spec spec, BarKit kit)
    {
        var allowed = spec.Serve.GlassesInstead.Append(spec.Serve.Glass).ToHashSet();
        if (kit.Glasses.FirstOrDefault(glass => glass.Slug == spec.Serve.Glass) is { } own)
            allowed.UnionWith(own.Instead);
        return [.. kit.Glasses.Where(glass => allowed.Contains(glass.Slug) && glass.Count > 0)];
    }

    private static bool HasTools(Spec spec, BarKit kit)
    {
        bool Has(string part) => kit.Tools.Any(tool => tool.Count > 0 && tool.Slug.Text.Contains(part, StringComparison.Ordinal));
        return spec.Method?.Kind switch
        {
            MethodKind.Shaken or MethodKind.Thrown => Has("shak") || Has("tin"),
            MethodKind.Stirred => Has("mixing-glass"),
            MethodKind.MuddledAndBuilt or MethodKind.MuddledAndShaken => Has("muddler"),
            MethodKind.Swizzled => Has("swizzle"),
            MethodKind.Blended => Has("blender"),
            _ => true,
        };
    }
}
