using Barshow.Data.Archive;
using Barshow.Data.Archive.Import;
using Barshow.Data.Backup;
using Barshow.Data.Library;
using Barshow.Data.Opening;
using Barshow.Data.Stores;
using Barshow.Data.Use;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace Barshow.Data;

/// <summary>What the program needs to save and load.</summary>
public static class BarshowDataServices
{
    /// <summary>The database of a folder, its stores, and what opens it.</summary>
    public static IServiceCollection AddBarshowData(this IServiceCollection services, DataFolder folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        services.TryAddSingleton(TimeProvider.System);
        services.AddSingleton(folder);
        services.AddDbContextFactory<BarshowDb>(options => options.UseBarshowSqlite(SqliteOptions.ConnectionString(folder.Database)));
        services.AddSingleton<DatabaseOpener>();
        services.AddSingleton<HouseBackup>();
        services.AddSingleton<EpisodeStore>();
        services.AddSingleton<DrinkStore>();
        services.AddSingleton<IngredientStore>();
        services.AddSingleton<KitStore>();
        services.AddSingleton<HouseStore>();
        services.AddSingleton<FeaturedLogStore>();
        services.AddSingleton<BenchLogStore>();
        services.AddSingleton<BarStore>();
        services.AddSingleton<HouseExport>();
        services.AddSingleton<HouseImport>();
        services.AddSingleton<StockLoader>();
        services.AddSingleton<DrinkLibrary>();
        services.AddSingleton<IngredientUseFinder>();
        return services;
    }
}
