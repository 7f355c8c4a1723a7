using Barshow.Data.Archive;
using Barshow.Data.Tests.Support;

namespace Barshow.Data.Tests.Archive;

public sealed class StockLoadingTests : IAsyncLifetime
{
    private TestHouse _house = null!;
    private string _folder = null!;

    public async Task InitializeAsync()
    {
        _house = await TestHouse.OpenAsync();
        _folder = Path.Combine(_house.Folder.Path, "demo-data");
        Write("stock/manifest.json", """{ "format": "barshow-archive", "version": 1 }""");
        Write("stock/house.json", """{ "name": "My bar", "currency": "AUD" }""");
        Write("stock/drinks.json", """[{ "slug": "low-tide", "name": "Low Tide" }]""");
        Write("demo/manifest.json", """{ "format": "barshow-archive", "version": 1, "datesFrom": "2026-01-01" }""");
        Write("demo/house.json", """{ "name": "Salt Lane Bar" }""");
        Write("demo/episodes.json", """[{ "slug": "one", "title": "One", "shootDate": "2026-01-11", "publishDate": "2026-01-21" }]""");
        Write("demo/featured.json", """[{ "episodeTitle": "Old", "date": "2025-12-31", "spec": { "slug": "low-tide", "name": "Low Tide" } }]""");
    }

    public async Task DisposeAsync() => await _house.DisposeAsync();

    [Fact]
    public async Task The_stock_alone_brings_no_episodes()
    {
        Assert.True(await _house.Get<StockLoader>().LoadStockAsync(_folder));

        Assert.Equal("My bar", (await _house.House.LoadAsync()).Value.Name);
        Assert.Single(await _house.Drinks.ListAsync());
        Assert.Empty(await _house.Episodes.ListAsync());
    }

    [Fact]
    public async Task The_demo_lies_over_the_stock_and_its_dates_move_to_the_day_of_opening()
    {
        Assert.True(await _house.Get<StockLoader>().LoadDemoAsync(_folder));

        Assert.Equal("Salt Lane Bar", (await _house.House.LoadAsync()).Value.Name);
        Assert.Single(await _house.Drinks.ListAsync());
        var episode = Assert.Single(await _house.Episodes.ListAsync());
        Assert.Equal((new DateOnly(2027, 3, 16), new DateOnly(2027, 3, 26)), (episode.ShootDate, episode.PublishDate));
        Assert.Equal(new DateOnly(2027, 3, 5), Assert.Single((await _house.Featured.LoadAsync()).Features).Date);
    }

    [Fact]
    public async Task A_house_is_stocked_once()
    {
        var loader = _house.Get<StockLoader>();
        Assert.True(await loader.IsEmptyAsync());
        await loader.LoadStockAsync(_folder);

        Assert.False(await loader.IsEmptyAsync());
        Assert.False(await loader.LoadDemoAsync(_folder));
        Assert.Empty(await _house.Episodes.ListAsync());
    }

    [Fact]
    public async Task A_folder_that_is_not_sound_loads_nothing()
    {
        Write("demo/episodes.json", """[{ "slug": "one" }]""");

        var problem = await Assert.ThrowsAsync<InvalidDataException>(() => _house.Get<StockLoader>().LoadDemoAsync(_folder));

        Assert.Contains("The archive's episodes.json cannot be read at line 1", problem.Message, StringComparison.Ordinal);
        Assert.True(await _house.Get<StockLoader>().IsEmptyAsync());
    }

    private void Write(string name, string json)
    {
        var path = Path.Combine(_folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, json);
    }
}
