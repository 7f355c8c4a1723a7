namespace Barshow.Engine.Shooting.Order;

/// <summary>What a running order must keep. Each rule can be let go when nothing fits; the planner lets go the fewest and says which.</summary>
public enum OrderRule
{
    /// <summary>A drink is filmed while its preps are fresh.</summary>
    FreshWhenFilmed,

    /// <summary>The opener comes first.</summary>
    OpenerFirst,

    /// <summary>The closer comes last.</summary>
    CloserLast,

    /// <summary>Drinks to be compared are filmed one after the other.</summary>
    SideBySide,

    /// <summary>There is a clean glass for every take.</summary>
    CleanGlass,

    /// <summary>A washed glass is cold again before it is shown chilled.</summary>
    ColdGlass,

    /// <summary>Nobody works too long without a break.</summary>
    BreakInTime,

    /// <summary>A long day holds a meal, in time.</summary>
    MealInTime,

    /// <summary>The day ends in time.</summary>
    WrapInTime,
}

/// <summary>What the rules are called.</summary>
public static class OrderRules
{
    /// <summary>All rules, in the order they are applied.</summary>
    public static IReadOnlyList<OrderRule> All { get; } = Enum.GetValues<OrderRule>();

    /// <summary>The rule in plain words, a sentence.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No such rule.</exception>
    public static string InPlainWords(this OrderRule rule) => rule switch
    {
        OrderRule.FreshWhenFilmed => "A drink's takes and close-ups end while every house prep and pressed juice in it still looks and tastes right; a further batch may be made during the day.",
        OrderRule.OpenerFirst => "The drink pinned as the opener is filmed first.",
        OrderRule.CloserLast => "The drink pinned as the closer is filmed last.",
        OrderRule.SideBySide => "Two drinks that are to be compared are filmed one straight after the other.",
        OrderRule.CleanGlass => "Between two wash-ups no more glasses of a kind are used than the bar has.",
        OrderRule.ColdGlass => "After a wash-up a chilled drink waits until its glasses have been in the freezer again.",
        OrderRule.BreakInTime => "No stretch of work is longer than the house allows without a break or a meal.",
        OrderRule.MealInTime => "A day longer than the house's limit holds one meal, begun within that limit.",
        OrderRule.WrapInTime => "The last block ends by the hour the user gave.",
        _ => throw new ArgumentOutOfRangeException(nameof(rule), rule, "No such rule."),
    };

    /// <summary>How dear it is to let the rule go once: higher goes later. A house rule.</summary>
    internal static int Weight(this OrderRule rule) => rule switch
    {
        OrderRule.FreshWhenFilmed => 6,
        OrderRule.CleanGlass => 8,
        OrderRule.ColdGlass => 4,
        OrderRule.SideBySide => 4,
        OrderRule.OpenerFirst or OrderRule.CloserLast => 5,
        _ => 3,
    };
}

/// <summary>A rule as it binds one subject: "fresh when filmed" of one drink and one prep.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Subject">The drink or glass it binds, as it is shown; empty when it binds the day.</param>
/// <param name="Object">The prep or second drink it binds it to, as it is shown; empty for none.</param>
public sealed record Requirement(OrderRule Rule, string Subject = "", string Object = "")
{
    /// <summary>For people: "Garden Fizz is filmed while basil syrup is fresh".</summary>
    public override string ToString() => Rule switch
    {
        OrderRule.FreshWhenFilmed => $"{Subject} is filmed while {Object} is fresh",
        OrderRule.OpenerFirst => $"{Subject} is filmed first",
        OrderRule.CloserLast => $"{Subject} is filmed last",
        OrderRule.SideBySide => $"{Subject} and {Object} are filmed side by side",
        OrderRule.CleanGlass => $"clean glasses for every take: {Subject}",
        OrderRule.ColdGlass => $"{Subject} is shown in a cold glass",
        OrderRule.BreakInTime => Subject.Length == 0 ? "breaks in time" : $"a break in time: {Subject}",
        OrderRule.MealInTime => "a meal in time",
        _ => "the day ends in time",
    };
}
