using System.Diagnostics;
using System.Globalization;
using Barshow.Data;
using Barshow.Data.Archive.Import;
using Barshow.Data.Library;
using Barshow.Data.Opening;
using Barshow.Data.Stores;
using Barshow.Data.Use;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;
using Microsoft.Extensions.DependencyInjection;

namespace Barshow.Benchmarks.Library;

/// <summary>How long the server takes to list, filter and search 5,000 drinks and 1,000 ingredients: the 95th percentile is to be under 50 ms.</summary>
internal sealed class LibrarySpeed(TextWriter output, int rounds) : IDisposable
{
    private const double AimMilliseconds = 50;

    private readonly string _folder = Directory.CreateTempSubdirectory("barshow-speed").FullName;
    private bool _allWithin = true;

    /// <summary>Measures and prints.</summary>
    /// <returns>0 when every 95th percentile is within the aim, 2 when not.</returns>
    public static async Task<int> PrintAsync(TextWriter output, int rounds)
    {
        using var speed = new LibrarySpeed(output, rounds);
        return await speed.RunAsync();
    }

    public void Dispose()
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(_folder, recursive: true);
    }

    private async Task<int> RunAsync()
    {
        await using var services = new ServiceCollection().AddBarshowData(DataFolder.Resolve(_folder)).BuildServiceProvider();
        await services.GetRequiredService<DatabaseOpener>().OpenAsync();
        var archive = LargeLibrary.Make(drinks: 5000, ingredients: 1000, features: 1000);
        var watch = Stopwatch.StartNew();
        await services.GetRequiredService<HouseImport>().ApplyAsync(archive, null);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"5,000 drinks, 1,000 ingredients, 1,000 features imported in {watch.Elapsed.TotalSeconds:0.0} s; {rounds} rounds; aim: p95 under {AimMilliseconds:0} ms"));
        output.WriteLine("                                                   p50      p95      max  ms");

        var drinks = services.GetRequiredService<DrinkStore>();
        var ingredients = services.GetRequiredService<IngredientStore>();
        var library = services.GetRequiredService<DrinkLibrary>();
        watch.Restart();
        await library.FindAsync(new() { StrengthFrom = 0 });
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{"first list after the start (once)",-46} {watch.Elapsed.TotalMilliseconds,8:0.0}"));

        await FindAsync("all drinks", new());
        await FindAsync("by base", new() { Base = "spirit 3" });
        await FindAsync("by family, method, glass and tag", new() { Family = "sour", Method = MethodKind.Shaken, Glass = Slug.Parse("coupe"), Tag = "herbal" });
        await FindAsync("by strength", new() { StrengthFrom = 12, StrengthTo = 18 });
        await FindAsync("not featured lately", new() { NotFeaturedSince = new(2016, 1, 1) });
        await FindAsync("covered by what is on hand", new() { OnHandOnly = true });
        await FindAsync("search, begun", new() { Text = "tide" });
        await FindAsync("search, without accents", new() { Text = "ebene cote" });
        await FindAsync("search, misspelled", new() { Text = "grantie bridgde cobbelr" });
        await FindAsync("search, nothing found", new() { Text = "xylophone quartet" });
        await MeasureAsync("drinks as summaries", _ => drinks.ListAsync());
        await MeasureAsync("ingredients", _ => ingredients.ListAsync());
        await MeasureAsync("search of ingredients, misspelled", _ => ingredients.SearchAsync("safron lquieur"));
        await MeasureAsync("one drink", round => drinks.FindAsync(archive.Drinks.Values[round].Slug));
        await MeasureAsync("where an ingredient is used", round => services.GetRequiredService<IngredientUseFinder>().FindAsync(archive.Ingredients.Values[round].Slug));
        await MeasureAsync("save of a drink", round => drinks.SaveAsync(archive.Drinks.Values[round] with { Taste = "changed" }, 1));
        await MeasureAsync("list after the save of a drink", _ => library.FindAsync(new()), before: round => drinks.SaveAsync(archive.Drinks.Values[round + 1000] with { Taste = "changed" }, 1));
        await MeasureAsync("list after the save of an ingredient", _ => library.FindAsync(new()), before: round => ingredients.SaveAsync(archive.Ingredients.Values[round] with { OnHand = Measure.Millilitres(9) }, 1));
        await MeasureAsync("by strength after the save of an ingredient", _ => library.FindAsync(new() { StrengthFrom = 12 }), before: round => ingredients.SaveAsync(archive.Ingredients.Values[round + 500] with { OnHand = Measure.Millilitres(9) }, 1));
        return _allWithin ? 0 : 2;

        Task FindAsync(string what, DrinkQuery query) => MeasureAsync(what, _ => library.FindAsync(query));
    }

    private async Task MeasureAsync<TResult>(string what, Func<int, Task<TResult>> work, Func<int, Task>? before = null)
    {
        var times = new List<double>();
        for (var round = 0; round < rounds; round++)
        {
            if (before is not null)
                await before(round);
            var watch = Stopwatch.StartNew();
            await work(round);
            times.Add(watch.Elapsed.TotalMilliseconds);
        }

        times.Sort();
        var p95 = times[(int)Math.Ceiling(0.95 * times.Count) - 1];
        _allWithin &= p95 < AimMilliseconds;
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what,-46} {times[times.Count / 2],8:0.0} {p95,8:0.0} {times[^1],8:0.0}{(p95 < AimMilliseconds ? "" : "  over the aim")}"));
    }
}
