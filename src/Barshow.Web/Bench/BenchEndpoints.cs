using System.Text.Json;
using Barshow.Data.Json;
using Barshow.Data.Stores;
using Barshow.Engine.Names;
using Barshow.Engine.Shooting.AsPoured;
using Barshow.Web.Desk;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Barshow.Web.Bench;

/// <summary>The bench: its page, and where its log is handed over.</summary>
internal static class BenchEndpoints
{
    private const int MostBytes = 512 * 1024;
    private const int MostEntries = 2_000;
    private const int LongestWord = 200;

    public static void Map(WebApplication app)
    {
        app.MapGet("/bench/{slug}", PageAsync);
        app.MapPost("/bench/{slug}/entries", TakeOverAsync);
    }

    private static async Task<Results<RazorComponentResult<BenchPage>, NotFound>> PageAsync(string slug, EpisodeStore episodes, BarStore bars, ShootPlans plans, CancellationToken cancel)
    {
        if (!Slug.TryParse(slug, out var name) || await episodes.FindAsync(name, cancel) is not { } stored)
            return TypedResults.NotFound();
        var bar = await bars.LoadAsync(cancel);
        var plan = stored.Value.Lineup.Count == 0 ? null : await plans.PlanAsync(stored.Value, bar, null, cancel);
        var used = stored.Value.Lineup.SelectMany(drink => drink.Spec.Lines).Select(line => line.Ingredient).ToHashSet();
        return new RazorComponentResult<BenchPage>(new Dictionary<string, object?>
        {
            [nameof(BenchPage.Episode)] = stored.Value,
            [nameof(BenchPage.Cards)] = BenchCards.Of(stored.Value, bar, plan),
            // What the lineup uses comes first: it stands on the bench.
            [nameof(BenchPage.Pool)] = bar.Ingredients.All.OrderByDescending(ingredient => used.Contains(ingredient.Slug)).ThenBy(ingredient => ingredient.Name, StringComparer.Ordinal).ToList(),
            [nameof(BenchPage.AddedAmounts)] = BenchCards.AddedAmounts(stored.Value, bar),
        });
    }

    /// <summary>Takes entries over, each exactly once, and says up to which sequence the device has handed over without a gap.</summary>
    private static async Task<IResult> TakeOverAsync(string slug, HttpRequest request, EpisodeStore episodes, BenchLogStore logs, CancellationToken cancel)
    {
        if (!Slug.TryParse(slug, out var name) || await episodes.FindAsync(name, cancel) is null)
            return Results.NotFound();
        // Another site's form cannot send this type without being asked first.
        if (!request.HasJsonContentType())
            return Results.Text("A bench log is handed over as JSON.", statusCode: StatusCodes.Status415UnsupportedMediaType);
        if (await ReadAsync(request, cancel) is not { } entries)
            return Results.BadRequest("These are no entries of a bench log.");
        var log = await logs.AppendAsync(name, entries, cancel);
        return Results.Json(entries.Select(entry => entry.Device).Distinct().ToDictionary(device => device, log.HandedOver));
    }

    private static async Task<IReadOnlyList<PouredEntry>?> ReadAsync(HttpRequest request, CancellationToken cancel)
    {
        using var body = new MemoryStream();
        var buffer = new byte[16 * 1024];
        for (int read; (read = await request.Body.ReadAsync(buffer, cancel)) > 0;)
        {
            body.Write(buffer, 0, read);
            if (body.Length > MostBytes)
                return null;
        }

        try
        {
            var entries = JsonSerializer.Deserialize<List<PouredEntry>>(body.ToArray(), DomainJson.Compact);
            return entries is { Count: > 0 and <= MostEntries } && entries.TrueForAll(IsSound) ? entries : null;
        }
        catch (Exception problem) when (problem is JsonException or FormatException)
        {
            return null;
        }
    }

    private static bool IsSound(PouredEntry entry) =>
        entry is { Device.Length: > 0 and <= LongestWord, Sequence: > 0, Take: >= 0 and < 1_000, Line: null or (>= 0 and < 1_000) }
        && entry.Name.Length <= LongestWord && entry.Remark.Length <= LongestWord && entry.Task.Length <= LongestWord
        && Enum.IsDefined(entry.Kind) && (entry.Verdict is null || Enum.IsDefined(entry.Verdict.Value));
}
