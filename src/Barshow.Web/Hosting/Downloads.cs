using System.Text;
using Barshow.Data.Archive;
using Barshow.Data.Backup;
using Barshow.Data.Stores;
using Barshow.Engine.Names;
using Barshow.Engine.Publishing;
using Barshow.Engine.Publishing.Packaging;
using Barshow.Engine.Publishing.Tables;
using Barshow.Web.Desk;

namespace Barshow.Web.Hosting;

/// <summary>What a browser can download: an episode's package, call sheet and order, and the archive and the backups of the house.</summary>
internal static class Downloads
{
    private const string CallSheet = "call-sheet.html";
    private const string Order = "shopping.csv";

    public static void Map(WebApplication app)
    {
        app.MapGet("/episodes/{slug}/package.zip", ZipAsync);
        app.MapGet("/episodes/{slug}/" + CallSheet, CallSheetAsync);
        app.MapGet("/episodes/{slug}/" + Order, OrderAsync);
        app.MapGet("/house/archive.zip", ArchiveAsync);
        app.MapGet("/house/backups/{name}", Backup);
    }

    private static async Task<IResult> ZipAsync(string slug, EpisodeStore episodes, BarStore bars, FeaturedLogStore logs, ShootPlans plans, TimeProvider clock, CancellationToken cancel)
    {
        if (await MakeAsync(slug, new() { MadeAt = clock.GetLocalNow() }, episodes, bars, logs, plans, clock, cancel) is not { } package)
            return Results.NotFound();
        var file = new MemoryStream();
        await PackageZip.WriteAsync(package, file, cancel);
        file.Position = 0;
        return Results.File(file, "application/zip", $"{slug}.zip");
    }

    private static async Task<IResult> CallSheetAsync(string slug, EpisodeStore episodes, BarStore bars, FeaturedLogStore logs, ShootPlans plans, TimeProvider clock, CancellationToken cancel) =>
        await MakeAsync(slug, new() { Cards = false, Site = false, Pdf = false }, episodes, bars, logs, plans, clock, cancel) is { } package && package.Files.FirstOrDefault(file => file.Path == CallSheet) is { } page
            ? Results.Text(page.ReadText(), "text/html; charset=utf-8")
            : Results.NotFound();

    // The order needs no shoot day, so nothing is solved for it.
    private static async Task<IResult> OrderAsync(string slug, EpisodeStore episodes, BarStore bars, FeaturedLogStore logs, TimeProvider clock, CancellationToken cancel)
    {
        if (!Slug.TryParse(slug, out var name) || await episodes.FindAsync(name, cancel) is not { } stored)
            return Results.NotFound();
        var today = DateOnly.FromDateTime(clock.GetLocalNow().DateTime);
        var work = EpisodeWork.Of(stored.Value, await bars.LoadAsync(cancel), await logs.LoadAsync(cancel), today);
        return Results.File(Encoding.UTF8.GetBytes(ShoppingTable.Write(work.ShootBasket, work.Results)), "text/csv; charset=utf-8", $"{slug}-order.csv");
    }

    private static async Task<IResult> ArchiveAsync(HouseExport export, TimeProvider clock, CancellationToken cancel)
    {
        var file = new MemoryStream();
        await export.ExportAsync(file, cancel);
        file.Position = 0;
        return Results.File(file, "application/zip", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"barshow-{clock.GetLocalNow():yyyy-MM-dd}.zip"));
    }

    // Only a file of the list is given out, whatever the address says.
    private static IResult Backup(string name, HouseBackup backup) =>
        backup.List().FirstOrDefault(kept => kept.Name == name) is { } kept
            ? Results.File(kept.Path, "application/vnd.sqlite3", kept.Name)
            : Results.NotFound();

    private static async Task<EpisodePackage?> MakeAsync(string name, PackageSettings settings, EpisodeStore episodes, BarStore bars, FeaturedLogStore logs, ShootPlans plans, TimeProvider clock, CancellationToken cancel)
    {
        if (!Slug.TryParse(name, out var slug) || await episodes.FindAsync(slug, cancel) is not { } stored)
            return null;
        var bar = await bars.LoadAsync(cancel);
        var log = await logs.LoadAsync(cancel);
        var plan = await plans.PlanAsync(stored.Value, bar, null, cancel);
        var today = DateOnly.FromDateTime(clock.GetLocalNow().DateTime);
        return EpisodePackage.Make(EpisodeWork.Of(stored.Value, bar, log, today, plan).Results, settings, cancel: cancel);
    }
}
