using Barshow.Data.Opening;

namespace Barshow.Web.Hosting;

/// <summary>Makes the database ready before the first page is served.</summary>
internal sealed class OpeningService(DatabaseOpener opener) : IHostedService
{
    public async Task StartAsync(CancellationToken cancellationToken) => await opener.OpenAsync(cancellationToken);

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;
}
