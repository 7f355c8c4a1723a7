using System.CommandLine;
using Barshow.Data.Opening;
using Barshow.Data.Stores;
using Barshow.Engine.Findings;
using Barshow.Engine.Names;
using Barshow.Engine.Shooting;

namespace Barshow.Web.Verbs;

/// <summary><c>shoot --episode SLUG</c> and <c>mise --episode SLUG</c>: the running order and the mise list of a stored episode. They change nothing.</summary>
internal static class ShootVerbs
{
    public static void AddTo(RootCommand root)
    {
        root.Subcommands.Add(Verb("shoot", "Put the drinks of an episode into the order of its shoot day.", ShootReport.WriteOrderJson, ShootReport.WriteOrderText, plan => [.. plan.Order.Findings, .. plan.Viewers.Findings, .. plan.Tasting.Findings]));
        root.Subcommands.Add(Verb("mise", "List what must be ready for an episode's shoot day, each task at its hour.", ShootReport.WriteMiseJson, ShootReport.WriteMiseText, plan => plan.Mise.Findings));
    }

    private static Command Verb(string name, string description, Action<Stream, ShootPlan> writeJson, Action<TextWriter, ShootPlan> writeText, Func<ShootPlan, IReadOnlyList<Finding>> findings)
    {
        var episode = new Option<string>("--episode") { Description = "The name the episode is kept under.", HelpName = "SLUG", Required = true };
        var json = new Option<bool>("--json") { Description = "Print JSON." };
        var verb = new Command(name, description) { episode, json };
        verb.SetAction(async (parsed, cancel) =>
        {
            var (plan, refusal) = await PlanAsync(parsed.GetRequiredValue(episode), parsed.GetValue(CommandLine.Data), cancel);
            if (plan is null)
                return CommandLine.Refuse(refusal);
            if (parsed.GetValue(json))
                writeJson(Console.OpenStandardOutput(), plan);
            else
                writeText(Console.Out, plan);
            return findings(plan).Any(finding => finding.Severity is Severity.Stop) ? 2 : 0;
        });
        return verb;
    }

    private static async Task<(ShootPlan? Plan, string Refusal)> PlanAsync(string episode, string? data, CancellationToken cancel)
    {
        try
        {
            await using var house = await OpenedHouse.OpenAsync(data, cancel);
            if (!Slug.TryParse(episode, out var slug) || await house.Get<EpisodeStore>().FindAsync(slug, cancel) is not { } stored)
                return (null, $"no episode is kept under the name \"{episode}\".");
            var bar = await house.Get<BarStore>().LoadAsync(cancel);
            return (ShootPlan.Of(stored.Value, bar, cancel: cancel), "");
        }
        catch (DatabaseUnusableException problem)
        {
            return (null, problem.Message);
        }
    }
}
