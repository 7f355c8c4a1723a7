using System.Globalization;
using Barshow.Engine.Findings;
using Barshow.Engine.Shooting.Order;

namespace Barshow.Engine.Shooting.Mise;

/// <summary>What the mise planner says, in one place.</summary>
internal static class MiseSentences
{
    public static Finding ToolMissing(string drink, string tool) => new(FindingCatalogue.ToolMissing, drink,
        $"{drink} needs a {tool}, which the bar kit does not list.", $"Add the {tool} to the kit, or change how the drink is made.");

    public static Finding ToolsNotCounted() => new(FindingCatalogue.ToolMissing, "bar kit",
        "The bar kit lists no tools, so whether they are there was not checked.", "List the shakers, strainers and the like of the bar.");

    public static Finding WindowMissed(MiseTask task, ShootClock clock) => new(FindingCatalogue.MiseWindowMissed, task.Text.TrimEnd('.'),
        task.End > task.NotAfter
            ? $"\"{task.Text.TrimEnd('.')}\" ends at {clock.Say(task.End)}, later than {clock.Say(task.NotAfter)}."
            : $"\"{task.Text.TrimEnd('.')}\" starts at {clock.Say(task.Start)}, before {clock.Say(task.NotBefore)}, so what it makes is no longer fresh when it is last filmed.",
        "Get another pair of hands, use a prep that keeps longer, or film the drink earlier.");

    public static Finding Unproven(Level level) => new(FindingCatalogue.PlanUnproven, "mise list",
        string.Create(CultureInfo.InvariantCulture, $"\"{level.Aim}\" reached {level.Value} {level.Unit}; it is only known that none can do better than {level.Bound}."),
        "Take the hours as they are, or allow more effort.");

    public static Finding NotMade() => new(FindingCatalogue.PlanNotMade, "mise list",
        "The planner was stopped, or its effort ran out, before it found hours for every task.", "Try again, or allow more effort.");
}
