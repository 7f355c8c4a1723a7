using System.IO.Compression;
using System.Text.Json;
using Barshow.Data.Archive;
using Barshow.Data.Archive.Import;
using Barshow.Data.Tests.Support;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Microsoft.Data.Sqlite;

namespace Barshow.Data.Tests.Archive;

/// <summary>What is exported is read back by hand, entry by entry, with nothing of the exporter's.</summary>
public sealed class RoundTripTests : IAsyncLifetime
{
    private TestHouse _house = null!;

    public async Task InitializeAsync()
    {
        _house = await TestHouse.OpenAsync();
        await FillAsync(_house);
    }

    public async Task DisposeAsync() => await _house.DisposeAsync();

    [Fact]
    public async Task The_file_is_a_zip_of_json_that_says_what_it_is()
    {
        using var zip = await ExportAsync(_house);

        Assert.Equal(
            ["bin.json", "drinks.json", "episodes.json", "featured.json", "history.json", "house.json", "ingredients.json", "kit.json", "manifest.json", "saved.json"],
            zip.Entries.Select(entry => entry.FullName).Order(StringComparer.Ordinal));
        var manifest = Json(zip, "manifest.json");
        Assert.Equal("barshow-archive", manifest.GetProperty("format").GetString());
        Assert.Equal(1, manifest.GetProperty("version").GetInt32());
        Assert.Equal("2027-03-06T10:00:00+00:00", manifest.GetProperty("madeAt").GetString());
    }

    [Fact]
    public async Task Every_value_stands_in_it_as_it_was_typed()
    {
        using var zip = await ExportAsync(_house);

        var drink = Assert.Single(Json(zip, "drinks.json").EnumerateArray());
        Assert.Equal("tide-pool-sour", drink.GetProperty("slug").GetString());
        Assert.Equal("Tide Pool Sour", drink.GetProperty("name").GetString());
        Assert.Equal(["white-rum", "lime-juice"], drink.GetProperty("lines").EnumerateArray().Select(line => line.GetProperty("ingredient").GetString()));
        Assert.Equal("3/2 oz", drink.GetProperty("lines")[0].GetProperty("amounts")[0].GetProperty("measure").GetString());
        var ingredients = Json(zip, "ingredients.json").EnumerateArray().ToList();
        Assert.Equal(["mint-syrup", "white-rum"], ingredients.Select(each => each.GetProperty("slug").GetString()));
        Assert.Equal(40, ingredients[1].GetProperty("composition").GetProperty("strength").GetDouble());
        Assert.Equal("100 g", ingredients[0].GetProperty("prep").GetProperty("inputs")[0].GetProperty("amount").GetString());
        Assert.Equal("Ébène & Søn’s «first»", Json(zip, "episodes.json")[0].GetProperty("title").GetString());
        Assert.Equal("2025-04-01", Json(zip, "featured.json")[0].GetProperty("date").GetString());
        Assert.Equal(0, Json(zip, "house.json").GetProperty("spillShare").GetDouble());
        Assert.Equal(165, Json(zip, "kit.json").GetProperty("glasses")[0].GetProperty("brimfulMillilitres").GetDouble());
    }

    [Fact]
    public async Task The_bin_the_signatures_and_the_history_are_in_it()
    {
        using var zip = await ExportAsync(_house);

        var binned = Assert.Single(Json(zip, "bin.json").GetProperty("drinks").EnumerateArray());
        Assert.Equal("Idris", binned.GetProperty("deletedBy").GetString());
        Assert.Equal("Low Tide", binned.GetProperty("value").GetProperty("name").GetString());
        var signature = Json(zip, "saved.json").EnumerateArray().Single(each => each.GetProperty("slug").GetString() == "tide-pool-sour");
        Assert.Equal((2, "Idris"), (signature.GetProperty("version").GetInt32(), signature.GetProperty("by").GetString()));
        var line = Json(zip, "history.json").EnumerateArray().Single(each => each.GetProperty("slug").GetString() == "tide-pool-sour" && each.GetProperty("deed").GetString() == "saved");
        Assert.Equal("soft", line.GetProperty("before").GetProperty("taste").GetString());
    }

    [Fact]
    public async Task Imported_into_an_empty_house_it_gives_the_same_house()
    {
        await using var other = await TestHouse.OpenAsync();
        var reading = ArchiveReader.Read(new MemoryStream(await BytesAsync(_house)), new(2030, 1, 1));
        Assert.Null(reading.Refusal);

        var result = await other.Get<HouseImport>().ApplyAsync(reading.Archive!, null, "Somebody else");

        Assert.True(result.Done);
        Assert.Equal(await TextsAsync(_house), await TextsAsync(other));
        var drink = (await other.Drinks.FindAsync(Slug.Of("Tide Pool Sour")))!;
        Assert.Equal((2, "Idris"), (drink.Version, drink.SavedBy));
        Assert.Equal("Low Tide", Assert.Single(await other.Drinks.ListDeletedAsync()).Name);
        Assert.Equal(
            (await _house.Drinks.HistoryAsync(Slug.Of("Tide Pool Sour"))).Select(line => (line.Version, line.Deed, line.By)),
            (await other.Drinks.HistoryAsync(Slug.Of("Tide Pool Sour"))).Select(line => (line.Version, line.Deed, line.By)));
    }

    [Fact]
    public async Task A_house_exported_twice_gives_the_same_bytes() => Assert.Equal(await BytesAsync(_house), await BytesAsync(_house));

    [Fact]
    public async Task An_export_that_fails_leaves_no_file_behind()
    {
        var folder = Path.Combine(_house.Folder.Path, "out");
        var path = Path.Combine(folder, "house.zip");

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => _house.Get<HouseExport>().ExportAsync(path, new CancellationToken(canceled: true)));

        Assert.Empty(Directory.GetFiles(folder));
    }

    private static async Task FillAsync(TestHouse house)
    {
        await house.House.SaveAsync(new() { Name = "Salt Lane Bar", SpillShare = 0 }, 0, "Noor");
        await house.Kit.SaveAsync(new() { Glasses = [new() { Slug = Slug.Of("coupe"), Name = "Coupe", BrimfulMillilitres = 165, Count = 4 }], Jiggers = [new("Two-sided", [Measure.Ounces(1), Measure.Ounces(2)])] }, 0, "Noor");
        await house.Ingredients.SaveAsync(Make.Ingredient(), null, "Noor");
        await house.Ingredients.SaveAsync(Make.Prep("Mint syrup", "sugar", "mint"), null, "Noor");
        await house.Drinks.SaveAsync(Make.Drink() with { Taste = "soft" }, null, "Noor");
        house.Clock.Now = house.Clock.Now.AddMinutes(-3);
        await house.Drinks.SaveAsync(Make.Drink() with { Taste = "sharp" }, 1, "Idris");
        house.Clock.Now = house.Clock.Now.AddMinutes(3);
        await house.Drinks.SaveAsync(Make.Drink("Low Tide"), null, "Noor");
        await house.Drinks.DeleteAsync(Slug.Of("Low Tide"), "Idris");
        await house.Episodes.SaveAsync(Make.Episode("Ébène & Søn’s «first»", Make.Drink()), null, "Noor");
        await house.Featured.AddAsync(Make.Feature(), "Noor");
    }

    private static async Task<byte[]> BytesAsync(TestHouse house)
    {
        var path = Path.Combine(house.Folder.Path, "export.zip");
        await house.Get<HouseExport>().ExportAsync(path);
        return await File.ReadAllBytesAsync(path);
    }

    private static async Task<ZipArchive> ExportAsync(TestHouse house) => new(new MemoryStream(await BytesAsync(house)), ZipArchiveMode.Read);

    private static JsonElement Json(ZipArchive zip, string entry)
    {
        using var stream = zip.GetEntry(entry)!.Open();
        return JsonDocument.Parse(stream).RootElement;
    }

    // The rows as SQLite holds them, read without the mapping.
    private static async Task<IReadOnlyList<string>> TextsAsync(TestHouse house)
    {
        using var connection = new SqliteConnection($"Data Source={house.Folder.Database}");
        await connection.OpenAsync();
        var texts = new List<string>();
        foreach (var table in new[] { "House", "Kit", "Ingredients", "Drinks", "Episodes", "Features" })
        {
            using var command = connection.CreateCommand();
            command.CommandText = $"SELECT Slug || ' ' || Version || ' ' || SavedAt || ' ' || SavedBy || ' ' || ifnull(DeletedAt, '') || ' ' || Document FROM \"{table}\" ORDER BY 1";
            using var reader = await command.ExecuteReaderAsync();
            while (await reader.ReadAsync())
                texts.Add(table + " " + reader.GetString(0));
        }

        return texts;
    }
}
