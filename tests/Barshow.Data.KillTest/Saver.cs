using System.Globalization;
using Barshow.Data.Opening;
using Barshow.Data.Stores;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;
using Microsoft.Extensions.DependencyInjection;

namespace Barshow.Data.KillTest;

/// <summary>Saves one drink after another as the app does, and prints each save when the store has acknowledged it.</summary>
internal static class Saver
{
    /// <summary>How many saves a run makes if nobody kills it.</summary>
    public const int Saves = 100;

    /// <summary>How many drinks it goes round; each is saved over many times.</summary>
    public const int Drinks = 7;

    // The save that is acknowledged and dropped when the check is to be shown to fail; early enough to come before any kill.
    private const int Dropped = 3;

    /// <summary>Saves on from where the last run was killed.</summary>
    /// <param name="path">The data folder.</param>
    /// <param name="dropOne">Whether one save is acknowledged without being made.</param>
    public static async Task<int> RunAsync(string path, bool dropOne)
    {
        var folder = DataFolder.Resolve(path);
        await using var services = new ServiceCollection().AddBarshowData(folder).BuildServiceProvider();
        await services.GetRequiredService<DatabaseOpener>().OpenAsync();
        var store = services.GetRequiredService<DrinkStore>();
        await using var output = new StreamWriter(Console.OpenStandardOutput()) { AutoFlush = true };

        for (var count = 0; count < Saves; count++)
        {
            var slug = SlugOf(count % Drinks);
            var now = (await store.FindAsync(slug))?.Version ?? 0;
            // A saver that has dropped a save goes on counting it, as one would that had believed in it.
            var version = now + 1 + (dropOne && count > Dropped && count % Drinks == Dropped ? 1 : 0);
            if (!dropOne || count != Dropped)
            {
                var result = await store.SaveAsync(Drink(slug, version), now);
                if (result is not SaveResult<Spec>.Saved)
                {
                    await Console.Error.WriteLineAsync($"The save of {slug} was not taken: {result}");
                    return 1;
                }
            }

            await output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"{slug} {version}"));
        }

        return 0;
    }

    /// <summary>The drinks, counted from 0.</summary>
    public static Slug SlugOf(int number) => Slug.Of(string.Create(CultureInfo.InvariantCulture, $"drink {number}"));

    /// <summary>What a version of a drink holds: a text of its own, long enough to fill several pages of the database.</summary>
    public static Spec Drink(Slug slug, int version) => new() { Slug = slug, Name = slug.Text, Taste = TasteOf(slug, version) };

    /// <summary>The text that belongs to a version and to no other.</summary>
    public static string TasteOf(Slug slug, int version) =>
        string.Join(' ', Enumerable.Repeat(string.Create(CultureInfo.InvariantCulture, $"{slug}-version-{version}"), 600));
}
