using Barshow.Data.Archive;
using Barshow.Data.Opening;

namespace Barshow.Web.Hosting;

/// <summary>Makes the database ready before the first page is served, and at the very first start fills it with the demo bar.</summary>
internal sealed class OpeningService(DatabaseOpener opener, StockLoader stock) : IHostedService
{
    public async Task StartAsync(CancellationToken cancellationToken)
    {
        await opener.OpenAsync(cancellationToken);
        if (await stock.IsEmptyAsync(cancellationToken))
            await stock.LoadDemoAsync(Path.Combine(AppContext.BaseDirectory, "demo-data"), cancellationToken);
    }

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;
}
