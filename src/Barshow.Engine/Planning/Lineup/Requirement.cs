using Barshow.Engine.Names;

namespace Barshow.Engine.Planning.Lineup;

/// <summary>What a requirement is about. Each kind is one rule of the model.</summary>
public enum RequirementKind
{
    /// <summary>How many drinks.</summary>
    Count,

    /// <summary>No drink twice under two names.</summary>
    Alike,

    /// <summary>The bottle in every drink.</summary>
    Bottle,

    /// <summary>A drink that must be in.</summary>
    MustHave,

    /// <summary>A drink that must not be in.</summary>
    LeaveOut,

    /// <summary>An ingredient no drink may need.</summary>
    Without,

    /// <summary>Months since a drink was featured.</summary>
    Fresh,

    /// <summary>The most of one family.</summary>
    FamilyCap,

    /// <summary>At least so many of a method, glass, tag or family.</summary>
    Floor,

    /// <summary>At least so many without alcohol.</summary>
    AlcoholFree,

    /// <summary>Glasses go round.</summary>
    Glasses,

    /// <summary>Tools are there.</summary>
    Tools,

    /// <summary>One bottle carries the viewer's lineup.</summary>
    BottleAtHome,

    /// <summary>So many bottles carry the shoot.</summary>
    BottlesOnSet,

    /// <summary>The most money.</summary>
    Money,

    /// <summary>The most things to buy.</summary>
    Things,
}

/// <summary>One thing a lineup must keep to, with a switch of its own.</summary>
/// <param name="Kind">Which rule it belongs to.</param>
/// <param name="Words">As it is named to the user: "at least 2 stirred drinks".</param>
/// <param name="Subject">The drink or ingredient it names; empty for none.</param>
/// <param name="Floor">The floor, for a floor.</param>
public sealed record Requirement(RequirementKind Kind, string Words, Slug Subject = default, Floor? Floor = null)
{
    /// <summary>What to do about it when it is the one to relax, a sentence.</summary>
    public string Relaxed => Kind switch
    {
        RequirementKind.Count => "Ask for at least one drink and for no more than the catalogue can give.",
        RequirementKind.Alike => "Let one drink be in twice under two names.",
        RequirementKind.Bottle => "Let a drink go without the bottle, or allow base swaps.",
        RequirementKind.MustHave => $"Let {Subject} go.",
        RequirementKind.LeaveOut => $"Allow {Subject}.",
        RequirementKind.Without => $"Allow {Subject}.",
        RequirementKind.Fresh => "Allow a drink that was featured more recently.",
        RequirementKind.FamilyCap => "Allow more of one family.",
        RequirementKind.Floor => $"Ask for fewer: {Words}.",
        RequirementKind.AlcoholFree => "Ask for fewer drinks without alcohol.",
        RequirementKind.Glasses => "Add glasses to the kit, or wash more often.",
        RequirementKind.Tools => "Add the missing tool to the kit.",
        RequirementKind.BottleAtHome => "Let viewers need a second bottle, or choose a larger one.",
        RequirementKind.BottlesOnSet => "Order one bottle more for the shoot.",
        RequirementKind.Money => "Raise the limit of the basket.",
        _ => "Allow one thing more to buy.",
    };

    /// <summary>The requirements of a question, in the order in which they are named to the user.</summary>
    public static IReadOnlyList<Requirement> Of(LineupQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        return [.. All(question)];
    }

    private static IEnumerable<Requirement> All(LineupQuestion question)
    {
        yield return new(RequirementKind.Count, PlanningFindings.Count(question.Count, "drink"));
        if (question.NoTwoAlike)
            yield return new(RequirementKind.Alike, "no drink twice under two names");
        foreach (var slug in question.MustHave.Distinct())
            yield return new(RequirementKind.MustHave, $"{slug} is in", slug);
        foreach (var slug in question.LeaveOut.Distinct())
            yield return new(RequirementKind.LeaveOut, $"{slug} is left out", slug);
        foreach (var slug in question.Without.Distinct())
            yield return new(RequirementKind.Without, $"nothing with {slug}", slug);
        if (question is { Bottle: { } bottle, BottleInEvery: true })
            yield return new(RequirementKind.Bottle, $"{bottle.Name} in every drink");
        if (question.Bottle is { Millilitres: > 0 and var size } && double.IsFinite(size))
        {
            if (question.OneBottleAtHome)
                yield return new(RequirementKind.BottleAtHome, $"one bottle of {PlanningFindings.Millilitres(size)} carries every drink once");
            if (question.ShootBottles is { } bottles)
                yield return new(RequirementKind.BottlesOnSet, $"{PlanningFindings.Count(bottles, "bottle")} for the shoot");
        }

        if (question is { FreshMonths: { } months, Date: not null })
            yield return new(RequirementKind.Fresh, $"not featured in the last {PlanningFindings.Count(months, "month")}");
        if (question.MostOfAFamily is { } most)
            yield return new(RequirementKind.FamilyCap, $"at most {PlanningFindings.Number(most)} of a family");
        foreach (var floor in question.Floors.Where(floor => floor.AtLeast > 0))
            yield return new(RequirementKind.Floor, $"at least {PlanningFindings.Number(floor.AtLeast)} {floor.Value}", default, floor);
        if (question.AlcoholFree > 0)
            yield return new(RequirementKind.AlcoholFree, $"at least {PlanningFindings.Number(question.AlcoholFree)} without alcohol");
        if (question.GlassStock)
            yield return new(RequirementKind.Glasses, "the glasses go round");
        if (question.ToolStock)
            yield return new(RequirementKind.Tools, "the tools are there");
        if (question.MostMoney is { } money)
            yield return new(RequirementKind.Money, FormattableString.Invariant($"the basket costs at most {money:#,0.00} {question.Bar.House.Currency}"));
        if (question.MostThings is { } things)
            yield return new(RequirementKind.Things, $"at most {PlanningFindings.Count(things, "thing")} to buy");
    }
}
