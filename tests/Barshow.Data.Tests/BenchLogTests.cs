using Barshow.Data.Stores;
using Barshow.Data.Tests.Support;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Shooting.AsPoured;

namespace Barshow.Data.Tests;

public sealed class BenchLogTests : IAsyncLifetime
{
    private static readonly Slug Night = Slug.Of("test night");
    private TestHouse _house = null!;

    public async Task InitializeAsync() => _house = await TestHouse.OpenAsync();

    public async Task DisposeAsync() => await _house.DisposeAsync();

    private static PouredEntry Entry(string device, long sequence, int millilitres = 30) => new()
    {
        Device = device,
        Sequence = sequence,
        At = new(2027, 3, 6, 10, (int)(sequence % 60), 0, TimeSpan.Zero),
        Kind = PouredKind.Poured,
        Drink = Slug.Of("Salt Lane Sour"),
        Take = 1,
        Line = 1,
        Measure = Measure.Millilitres(millilitres),
    };

    [Fact]
    public async Task An_entry_handed_over_twice_is_there_once()
    {
        var store = _house.Get<BenchLogStore>();
        PouredEntry[] entries = [Entry("tablet", 1), Entry("tablet", 2)];

        await store.AppendAsync(Night, entries);
        var log = await store.AppendAsync(Night, [.. entries, Entry("tablet", 3)]);

        Assert.Equal([1, 2, 3], log.Entries.Select(entry => entry.Sequence));
        Assert.Equal(3, log.HandedOver("tablet"));
        Assert.Equal(log.Entries, (await store.LoadAsync(Night)).Entries);
    }

    [Fact]
    public async Task Two_tablets_that_hand_over_at_once_lose_nothing_and_double_nothing()
    {
        var store = _house.Get<BenchLogStore>();
        var handOvers = Enumerable.Range(0, 12).Select(i => store.AppendAsync(Night, [.. Enumerable.Range(1, 20).Select(sequence => Entry(i % 2 == 0 ? "tablet" : "phone", sequence))]));

        await Task.WhenAll(handOvers.Select(handOver => Task.Run(() => handOver)));

        var log = await store.LoadAsync(Night);
        Assert.Equal(40, log.Entries.Count);
        Assert.Empty(log.Refused);
        Assert.Equal((20, 20), (log.HandedOver("tablet"), log.HandedOver("phone")));
    }

    [Fact]
    public async Task A_device_that_began_again_overwrites_nothing()
    {
        var store = _house.Get<BenchLogStore>();

        await store.AppendAsync(Night, [Entry("tablet", 1, 30)]);
        await store.AppendAsync(Night, [Entry("tablet", 1, 45)]);

        var log = await store.LoadAsync(Night);
        Assert.Equal(Measure.Millilitres(30), Assert.Single(log.Entries).Measure);
        Assert.Equal(Measure.Millilitres(45), Assert.Single(log.Refused).Measure);
    }

    [Fact]
    public async Task The_log_of_another_episode_is_another_log()
    {
        var store = _house.Get<BenchLogStore>();

        await store.AppendAsync(Night, [Entry("tablet", 1)]);

        Assert.Empty((await store.LoadAsync(Slug.Of("another night"))).Entries);
    }
}
