using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text.Json;
using Barshow.Data.Json;
using Barshow.Data.Rows;
using Barshow.Engine.Episodes;
using Barshow.Engine.Featured;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Specs;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Microsoft.EntityFrameworkCore.Storage;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Barshow.Data;

/// <summary>The database: one table for each sort of thing that is saved whole.</summary>
public sealed class BarshowDb(DbContextOptions<BarshowDb> options) : DbContext(options)
{
    /// <summary>Episodes, those in the bin among them.</summary>
    public DbSet<EpisodeRow> Episodes => Set<EpisodeRow>();

    /// <summary>Drinks of the library, those in the bin among them.</summary>
    public DbSet<DrinkRow> Drinks => Set<DrinkRow>();

    /// <summary>Ingredients, those in the bin among them.</summary>
    public DbSet<IngredientRow> Ingredients => Set<IngredientRow>();

    /// <summary>Drinks that were shown, those in the bin among them.</summary>
    public DbSet<FeatureRow> Features => Set<FeatureRow>();

    /// <summary>The settings of the house.</summary>
    public DbSet<HouseRow> Houses => Set<HouseRow>();

    /// <summary>Glasses, jiggers and tools.</summary>
    public DbSet<KitRow> Kits => Set<KitRow>();

    /// <summary>What the bench logged.</summary>
    public DbSet<BenchEntry> BenchEntries => Set<BenchEntry>();

    /// <summary>Who changed what and when.</summary>
    public DbSet<Change> Changes => Set<Change>();

    /// <summary>Holds on to the state of this instant, so that what is read one after another belongs together; nobody waits for it.</summary>
    public async Task<IDbContextTransaction> HoldStateAsync(CancellationToken cancel = default)
    {
        await Database.OpenConnectionAsync(cancel);
        // The usual way to begin would take the lock for writing.
        var transaction = ((SqliteConnection)Database.GetDbConnection()).BeginTransaction(deferred: true);
        return (await Database.UseTransactionAsync(transaction, cancel))!;
    }

    /// <inheritdoc/>
    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        // Text of one width, because SQLite sorts text and refuses to sort an instant.
        configurationBuilder.Properties<DateTimeOffset>().HaveConversion<InstantText>();
        configurationBuilder.Properties<Enum>().HaveConversion<string>();
    }

    /// <inheritdoc/>
    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<EpisodeRow>(row => Map<EpisodeRow, Episode>(row, "Episodes"));
        modelBuilder.Entity<DrinkRow>(row => Map<DrinkRow, Spec>(row, "Drinks"));
        modelBuilder.Entity<IngredientRow>(row => Map<IngredientRow, Ingredient>(row, "Ingredients"));
        modelBuilder.Entity<FeatureRow>(row =>
        {
            Map<FeatureRow, Feature>(row, "Features");
            row.HasIndex(feature => feature.Date);
        });
        modelBuilder.Entity<HouseRow>(row => Map<HouseRow, House>(row, "House"));
        modelBuilder.Entity<KitRow>(row => Map<KitRow, BarKit>(row, "Kit"));
        // Two entries under one device and sequence that say different things are both kept: the log tells them apart.
        modelBuilder.Entity<BenchEntry>(entry => entry.HasIndex(row => new { row.Episode, row.Device, row.Sequence, row.Entry }).IsUnique());
        modelBuilder.Entity<Change>(change => change.HasIndex(line => new { line.Kind, line.Slug, line.Version }));
    }

    private static void Map<TRow, T>(EntityTypeBuilder<TRow> row, string table)
        where TRow : Row<T>
        where T : class
    {
        row.ToTable(table);
        row.HasIndex(each => each.Slug).IsUnique().HasFilter("\"DeletedAt\" IS NULL");
        row.HasIndex(each => each.DeletedAt);
        row.Property(each => each.Version).IsConcurrencyToken();
        row.Property(each => each.Document).HasConversion(new DocumentText<T>(), new SameDocument<T>());
    }

    private sealed class InstantText() : ValueConverter<DateTimeOffset, string>(
        instant => instant.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss.fffffff'Z'", CultureInfo.InvariantCulture),
        text => DateTimeOffset.ParseExact(text, "yyyy-MM-dd'T'HH:mm:ss.fffffff'Z'", CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal));

    private sealed class DocumentText<T>() : ValueConverter<T, string>(
        document => JsonSerializer.Serialize(document, DomainJson.Compact),
        json => JsonSerializer.Deserialize<T>(json, DomainJson.Compact)!)
        where T : class;

    // The engine's objects never change, so a changed one is another one.
    private sealed class SameDocument<T>() : ValueComparer<T>(
        (one, other) => ReferenceEquals(one, other),
        document => RuntimeHelpers.GetHashCode(document),
        document => document)
        where T : class;
}
