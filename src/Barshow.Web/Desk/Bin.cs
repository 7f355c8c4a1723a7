using Barshow.Data.Stores;

namespace Barshow.Web.Desk;

/// <summary>What lies in the bin, of every sort, and how it is taken out or thrown out.</summary>
public sealed class Bin(EpisodeStore episodes, DrinkStore drinks, IngredientStore ingredients, FeaturedLogStore featured)
{
    /// <summary>Everything in the bin, last in first.</summary>
    public async Task<IReadOnlyList<BinnedThing>> ListAsync(CancellationToken cancel = default)
    {
        var all = new List<BinnedThing>();
        all.AddRange((await episodes.ListDeletedAsync(cancel)).Select(binned => new BinnedThing("episode", binned)));
        all.AddRange((await drinks.ListDeletedAsync(cancel)).Select(binned => new BinnedThing("drink", binned)));
        all.AddRange((await ingredients.ListDeletedAsync(cancel)).Select(binned => new BinnedThing("ingredient", binned)));
        all.AddRange((await featured.ListDeletedAsync(cancel)).Select(binned => new BinnedThing("feature", binned)));
        return [.. all.OrderByDescending(thing => thing.Binned.DeletedAt)];
    }

    /// <summary>Takes a thing out of the bin.</summary>
    /// <returns>Why it stays there, a sentence; null when it is back.</returns>
    public async Task<string?> RestoreAsync(BinnedThing thing, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(thing);
        var id = thing.Binned.Id;
        return thing.Kind switch
        {
            "episode" => Why(thing, await episodes.RestoreAsync(id, cancel: cancel)),
            "drink" => Why(thing, await drinks.RestoreAsync(id, cancel: cancel)),
            "ingredient" => Why(thing, await ingredients.RestoreAsync(id, cancel: cancel)),
            _ => Why(thing, await featured.RestoreAsync(id, cancel: cancel)),
        };
    }

    /// <summary>Throws these out for good, and nothing that came into the bin since.</summary>
    public async Task EmptyAsync(IReadOnlyList<BinnedThing> things, CancellationToken cancel = default)
    {
        await episodes.EmptyBinAsync(Ids("episode"), cancel);
        await drinks.EmptyBinAsync(Ids("drink"), cancel);
        await ingredients.EmptyBinAsync(Ids("ingredient"), cancel);
        await featured.EmptyBinAsync(Ids("feature"), cancel);

        List<long> Ids(string kind) => [.. things.Where(thing => thing.Kind == kind).Select(thing => thing.Binned.Id)];
    }

    private static string? Why<T>(BinnedThing thing, SaveResult<T> result) => result switch
    {
        SaveResult<T>.Saved => null,
        SaveResult<T>.Conflict => $"{thing.Binned.Name} stays in the bin: another {thing.Kind} has its place now. Delete or rename that one first.",
        SaveResult<T>.Refused refused => refused.Sentence,
        _ => $"{thing.Binned.Name} is no longer in the bin.",
    };
}

/// <summary>A thing in the bin.</summary>
/// <param name="Kind">What it is: "drink".</param>
/// <param name="Binned">Its row.</param>
public sealed record BinnedThing(string Kind, Binned Binned);
