using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Planning.Lineup;

/// <content>What the rules and the aims ask about one drink.</content>
internal sealed partial class CandidateBook
{
    private const int StaleForMonths = 60;

    private Candidate CandidateOf(Draft draft)
    {
        var spec = draft.Spec;
        var uses = draft.Needs.SelectMany(need => need.Uses).ToList();
        return new Candidate
        {
            Spec = spec,
            Swapped = draft.Swapped,
            Uses = uses,
            Things = [.. uses.Select(use => use.Thing).Distinct().Order()],
            Bottle = Thousandths(draft.BottleMillilitres),
            AlcoholFree = draft.Demand.Ingredients.All(need => need.Ingredient is null || !IsAlcoholic(need.Ingredient)),
            Features = [.. FeaturesOf(spec).Select(Place).Distinct().Order()],
            Preps = [.. draft.Demand.Preps.Select(prep => Place(prep.Prep)).Distinct().Order()],
            Glasses = GlassesOf(spec),
            Staleness = Staleness(spec.Slug),
            Minutes = MinutesOf(spec),
            Breaks = [.. Requirements.Index().Where(requirement => IsBroken(requirement.Item, draft)).Select(requirement => requirement.Index)],
            Floors = [.. Requirements.Index().Where(requirement => requirement.Item.Floor is { } floor && Counts(floor, spec)).Select(requirement => requirement.Index)],
        };
    }

    private bool IsBroken(Requirement requirement, Draft draft) => requirement.Kind switch
    {
        RequirementKind.Bottle => draft.BottleMillilitres <= 0,
        RequirementKind.LeaveOut => draft.Spec.Slug == requirement.Subject,
        RequirementKind.Without => draft.Demand[requirement.Subject] is not null || draft.Demand.Preps.Any(prep => prep.Prep.Slug == requirement.Subject) || draft.Needs.Any(need => need.Slug == requirement.Subject),
        RequirementKind.Fresh => Question.LastFeatured.TryGetValue(draft.Spec.Slug, out var last) && last > Question.Date!.Value.AddMonths(-Math.Clamp(Question.FreshMonths!.Value, 0, 1200)),
        RequirementKind.Glasses => !draft.Spec.Serve.Glass.IsEmpty && GlassesOf(draft.Spec).Count == 0,
        RequirementKind.Tools => !HasTool(draft.Spec.Method?.Kind),
        _ => false,
    };

    private static bool Counts(Floor floor, Spec spec) => floor.On switch
    {
        FloorOn.Method => spec.Method is { } method && Same(method.Name, floor.Value),
        FloorOn.Glass => Same(spec.Serve.Glass.Text, floor.Value),
        FloorOn.Tag => spec.Tags.Any(tag => Same(tag, floor.Value)),
        _ => Same(spec.Family, floor.Value),
    };

    private static bool Same(string left, string right) => NameFolding.Fold(left) == NameFolding.Fold(right);

    private static IEnumerable<string> FeaturesOf(Spec spec)
    {
        if (spec.Family.Length > 0)
            yield return "family: " + NameFolding.Fold(spec.Family);
        if (spec.Method is { } method)
            yield return "method: " + method.Name;
        if (!spec.Serve.Glass.IsEmpty)
            yield return "glass: " + spec.Serve.Glass;
        foreach (var tag in spec.Tags)
            yield return "tag: " + NameFolding.Fold(tag);
    }

    private int Place(string feature)
    {
        if (!_features.TryGetValue(feature, out var place))
            _features[feature] = place = _features.Count;
        return place;
    }

    private int Place(Ingredient prep)
    {
        if (!_prepPlaces.TryGetValue(prep.Slug, out var place))
        {
            _prepPlaces[prep.Slug] = place = _preps.Count;
            _preps.Add(prep);
        }

        return place;
    }

    // The glass itself and, for want of it, those that the spec or the kit lets stand in, as far as the kit has any.
    private IReadOnlyList<int> GlassesOf(Spec spec)
    {
        if (spec.Serve.Glass.IsEmpty)
            return [];
        var kit = Question.Bar.Kit;
        var instead = kit.TryGetGlass(spec.Serve.Glass, out var glass) ? glass.Instead : [];
        Slug[] allowed = [spec.Serve.Glass, .. spec.Serve.GlassesInstead, .. instead];
        return [.. kit.Glasses.Index().Where(known => known.Item.Count > 0 && allowed.Contains(known.Item.Slug)).Select(known => known.Index)];
    }

    private bool HasTool(MethodKind? method)
    {
        string[] tools = method switch
        {
            MethodKind.Shaken or MethodKind.Thrown => ["shak", "tin"],
            MethodKind.Stirred => ["mixing-glass"],
            MethodKind.MuddledAndBuilt or MethodKind.MuddledAndShaken => ["muddler"],
            MethodKind.Swizzled => ["swizzle"],
            MethodKind.Blended => ["blender"],
            _ => [],
        };
        return tools.Length == 0 || Question.Bar.Kit.Tools.Any(tool => tool.Count > 0 && tools.Any(name => tool.Slug.Text.Contains(name, StringComparison.Ordinal)));
    }

    private int Staleness(Slug slug)
    {
        if (Question.Date is not { } date || !Question.LastFeatured.TryGetValue(slug, out var last))
            return 0;
        var months = (date.Year - last.Year) * 12 + date.Month - last.Month - (date.Day < last.Day ? 1 : 0);
        return Math.Clamp(StaleForMonths - months, 0, StaleForMonths);
    }

    // Minutes of one live take by method. Common practice, no source.
    private static int MinutesOf(Spec spec) => spec.Method?.Kind switch
    {
        MethodKind.Built => 6,
        MethodKind.MuddledAndBuilt or MethodKind.MuddledAndShaken or MethodKind.Swizzled or MethodKind.Blended => 8,
        MethodKind.Layered => 12,
        _ => 7,
    };

    private static bool IsAlcoholic(Ingredient ingredient) => ingredient.Composition.Strength is { } strength
        ? strength.Percent > 0.5
        : ingredient.Kind is IngredientKind.Spirit or IngredientKind.Liqueur or IngredientKind.FortifiedWine or IngredientKind.Wine or IngredientKind.Beer or IngredientKind.Bitters;
}
