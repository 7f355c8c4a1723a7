using System.CommandLine;
using System.Diagnostics;
using Barshow.Data.Opening;
using Barshow.Data.Stores;
using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Names;
using Barshow.Engine.Planning.Lineup;

namespace Barshow.Web.Verbs;

/// <summary><c>plan --episode SLUG</c>: chooses the lineup of a stored episode from the library. Changes nothing.</summary>
internal static class PlanVerb
{
    public static void AddTo(RootCommand root)
    {
        var episode = new Option<string>("--episode") { Description = "The name the episode is kept under.", HelpName = "SLUG", Required = true };
        var count = new Option<int?>("--count") { Description = "How many drinks. Default: what the title promises, else as many as the lineup has.", HelpName = "N" };
        var must = new Option<string?>("--must") { Description = "Drinks that must be in, with commas between.", HelpName = "A,B" };
        var without = new Option<string?>("--without") { Description = "Drinks or ingredients to do without, with commas between.", HelpName = "C" };
        var things = new Option<int?>("--max-buy") { Description = "The most different things a viewer may have to buy.", HelpName = "N" };
        var aims = new Option<string?>("--aims") { Description = "What to aim at, most important first: cost, variety, freshness, effort.", HelpName = "cost,variety,freshness,effort" };
        var json = new Option<bool>("--json") { Description = "Print one JSON object." };
        var verb = new Command("plan", "Choose a lineup from the library, proven best for the aims.") { episode, count, must, without, things, aims, json };
        verb.SetAction((parsed, cancel) => RunAsync(
            new(parsed.GetRequiredValue(episode), parsed.GetValue(count), Names(parsed.GetValue(must)), Names(parsed.GetValue(without)), parsed.GetValue(things), parsed.GetValue(aims), parsed.GetValue(json)),
            parsed.GetValue(CommandLine.Data),
            cancel));
        root.Subcommands.Add(verb);
    }

    private sealed record Call(string Episode, int? Count, IReadOnlyList<string> Must, IReadOnlyList<string> Without, int? Things, string? Aims, bool Json);

    private static string[] Names(string? list) => (list ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private static async Task<int> RunAsync(Call call, string? data, CancellationToken cancel)
    {
        try
        {
            await using var house = await OpenedHouse.OpenAsync(data, cancel);
            if (!Slug.TryParse(call.Episode, out var slug) || await house.Get<EpisodeStore>().FindAsync(slug, cancel) is not { } stored)
                return CommandLine.Refuse($"no episode is kept under the name \"{call.Episode}\".");
            var question = await QuestionAsync(house, stored.Value, cancel);
            if (Narrow(question, call, out var asked) is { } refusal)
                return CommandLine.Refuse(refusal);
            return Answer(asked, call.Json, cancel);
        }
        catch (DatabaseUnusableException problem)
        {
            return CommandLine.Refuse(problem.Message);
        }
    }

    private static async Task<LineupQuestion> QuestionAsync(OpenedHouse house, Episode episode, CancellationToken cancel)
    {
        var bar = await house.Get<BarStore>().LoadAsync(cancel);
        var library = await house.Get<DrinkStore>().LoadAllAsync(cancel);
        var log = await house.Get<FeaturedLogStore>().LoadAsync(cancel);
        var day = episode.PublishDate ?? episode.ShootDate ?? DateOnly.FromDateTime(house.Get<TimeProvider>().GetLocalNow().DateTime);
        return LineupQuestions.For(episode, bar, [.. library.Select(drink => drink.Value)], log, day);
    }

    // The question with what the call asks beside it; a sentence when the call cannot be understood.
    private static string? Narrow(LineupQuestion question, Call call, out LineupQuestion asked)
    {
        asked = question;
        if (call.Count is < 1)
            return "--count is 1 or more.";
        if (call.Things is < 0)
            return "--max-buy is 0 or more.";
        var aims = new List<Aim>();
        foreach (var name in Names(call.Aims))
        {
            if (!Enum.TryParse<Aim>(name, ignoreCase: true, out var aim) || !Enum.IsDefined(aim) || int.TryParse(name, out _))
                return $"there is no aim \"{name}\"; there are cost, variety, freshness and effort.";
            aims.Add(aim);
        }

        var (must, leaveOut, without) = (new List<Slug>(), new List<Slug>(), new List<Slug>());
        foreach (var name in call.Must)
        {
            if (DrinkNamed(question, name) is not { } drink)
                return $"the library has no drink \"{name}\".";
            must.Add(drink);
        }

        foreach (var name in call.Without)
        {
            if (DrinkNamed(question, name) is { } drink)
                leaveOut.Add(drink);
            else if ((question.Bar.Ingredients[Slug.Of(name)] ?? question.Bar.Ingredients.Named(name)) is { } ingredient)
                without.Add(ingredient.Slug);
            else
                return $"the house has neither a drink nor an ingredient \"{name}\".";
        }

        asked = question with
        {
            Count = call.Count ?? question.Count,
            MustHave = must,
            LeaveOut = leaveOut,
            Without = without,
            MostThings = call.Things,
            Aims = aims.Count > 0 ? aims : question.Aims,
        };
        return null;
    }

    private static Slug? DrinkNamed(LineupQuestion question, string name)
    {
        var folded = NameFolding.Fold(name);
        return question.Catalogue
            .Where(spec => spec.Slug.Text == name || NameFolding.Fold(spec.Name) == folded || spec.Aliases.Any(alias => NameFolding.Fold(alias) == folded))
            .Select(spec => (Slug?)spec.Slug)
            .FirstOrDefault();
    }

    private static int Answer(LineupQuestion question, bool json, CancellationToken cancel)
    {
        var clock = Stopwatch.StartNew();
        double? first = null;
        var plan = LineupPlanner.Plan(question, _ => first ??= clock.Elapsed.TotalSeconds, cancel);
        var proof = plan.Outcome is LineupOutcome.Impossible ? plan.RelaxProven : plan.Levels.Count > 0 && plan.Levels.All(level => level.Proven);
        var times = new PlanTimes(first, proof ? clock.Elapsed.TotalSeconds : null);
        if (json)
            PlanReport.WriteJson(Console.OpenStandardOutput(), plan, times);
        else
            PlanReport.WriteText(Console.Out, plan, times, question.Bar.House.Currency);
        return plan.Findings.Any(finding => finding.Severity is Severity.Stop) ? 2 : 0;
    }
}

/// <summary>How long a plan took, in seconds.</summary>
/// <param name="First">Until a lineup was there; null when there was none.</param>
/// <param name="Proof">Until everything was proven; null when it was not.</param>
internal sealed record PlanTimes(double? First, double? Proof);
