using Barshow.Data.Opening;
using Barshow.Data.Stores;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace Barshow.Data.Tests.Support;

/// <summary>A house in a folder of its own, with a real database made by the migrations.</summary>
public sealed class TestHouse : IAsyncDisposable
{
    private readonly ServiceProvider _services;
    private readonly bool _keepFolder;

    private TestHouse(ServiceProvider services, DataFolder folder, TestClock clock, bool keepFolder)
    {
        _services = services;
        _keepFolder = keepFolder;
        Folder = folder;
        Clock = clock;
    }

    public DataFolder Folder { get; }

    public TestClock Clock { get; }

    public EpisodeStore Episodes => Get<EpisodeStore>();

    public DrinkStore Drinks => Get<DrinkStore>();

    public IngredientStore Ingredients => Get<IngredientStore>();

    public KitStore Kit => Get<KitStore>();

    public HouseStore House => Get<HouseStore>();

    public FeaturedLogStore Featured => Get<FeaturedLogStore>();

    public BarStore Bar => Get<BarStore>();

    public T Get<T>()
        where T : notnull => _services.GetRequiredService<T>();

    public Task<BarshowDb> OpenDbAsync() => Get<IDbContextFactory<BarshowDb>>().CreateDbContextAsync();

    /// <summary>Opens the house in that folder, or in a new one, as the program does at its start.</summary>
    public static async Task<TestHouse> OpenAsync(string? folder = null, bool keepFolder = false)
    {
        var clock = new TestClock();
        var data = DataFolder.Resolve(folder ?? NewFolder());
        var services = new ServiceCollection().AddSingleton<TimeProvider>(clock).AddBarshowData(data).BuildServiceProvider();
        await services.GetRequiredService<DatabaseOpener>().OpenAsync();
        return new(services, data, clock, keepFolder);
    }

    public static string NewFolder() => Path.Combine(Path.GetTempPath(), "barshow-tests", Path.GetRandomFileName());

    public async ValueTask DisposeAsync()
    {
        await _services.DisposeAsync();
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        if (!_keepFolder && Directory.Exists(Folder.Path))
            Directory.Delete(Folder.Path, recursive: true);
    }
}

/// <summary>A clock that stands until it is moved.</summary>
public sealed class TestClock : TimeProvider
{
    public DateTimeOffset Now { get; set; } = new(2027, 3, 6, 10, 0, 0, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => Now;
}
