using Barshow.Data.Archive;
using Barshow.Data.Opening;

namespace Barshow.Web.Hosting;

/// <summary>Makes the database ready before the first page is served, and at the very first start fills it: with the demo bar, or with the stock library alone.</summary>
internal sealed class OpeningService(DatabaseOpener opener, StockLoader stock, ServeSettings settings) : IHostedService
{
    public async Task StartAsync(CancellationToken cancellationToken)
    {
        await opener.OpenAsync(cancellationToken);
        if (!await stock.IsEmptyAsync(cancellationToken))
            return;
        var comesAlong = Path.Combine(AppContext.BaseDirectory, "demo-data");
        await (settings.StockAlone ? stock.LoadStockAsync(comesAlong, cancellationToken) : stock.LoadDemoAsync(comesAlong, cancellationToken));
    }

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;
}
