using Microsoft.Playwright;

namespace Barshow.Browser.Tests;

/// <summary>One server with the demo bar and one browser for all browser tests.</summary>
public sealed class Stage : IAsyncLifetime
{
    private IPlaywright? _playwright;
    private IBrowser? _browser;
    private Server? _server;

    public Server Server => _server!;

    public async Task InitializeAsync()
    {
        if (Chromium.Path is null)
            return;
        _server = await Server.StartAsync();
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Chromium.Path,
            Headless = Environment.GetEnvironmentVariable("BARSHOW_SHOW_BROWSER") is null,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
    }

    /// <summary>A window of its own, with its own cookies and clipboard.</summary>
    public async Task<Window> OpenAsync(int width = 1440, int height = 900, string? theme = null, string? address = null)
    {
        address ??= Server.Address;
        var context = await _browser!.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = height }, BaseURL = address, Locale = "en-AU" });
        await context.GrantPermissionsAsync(["clipboard-read", "clipboard-write"], new() { Origin = address });
        if (theme is not null)
            await context.AddCookiesAsync([new() { Name = "barshow-theme", Value = theme, Url = address }]);
        var page = await context.NewPageAsync();
        page.SetDefaultTimeout(60_000);
        return new(context, page, address);
    }

    public async Task DisposeAsync()
    {
        if (_browser is not null)
            await _browser.DisposeAsync();
        _playwright?.Dispose();
        if (_server is not null)
            await _server.DisposeAsync();
    }
}

/// <summary>A browser window that remembers what went wrong in it.</summary>
public sealed class Window : IAsyncDisposable
{
    private readonly IBrowserContext _context;
    private readonly List<string> _troubles = [];

    public Window(IBrowserContext context, IPage page, string address)
    {
        (_context, Page) = (context, page);
        page.Console += (_, message) => Note(message.Type is "error", $"console: {message.Text}");
        page.PageError += (_, error) => Note(true, $"script: {error}");
        page.RequestFailed += (_, request) => Note(request.Failure is not "net::ERR_ABORTED", $"failed: {request.Url}");
        page.Request += (_, request) => Note(!request.Url.StartsWith(address, StringComparison.Ordinal) && !request.Url.StartsWith("data:", StringComparison.Ordinal) && !request.Url.StartsWith("blob:", StringComparison.Ordinal), $"elsewhere: {request.Url}");
    }

    public IPage Page { get; }

    /// <summary>Errors on the console, requests that failed, and requests to anywhere else.</summary>
    public IReadOnlyList<string> Troubles => _troubles;

    /// <summary>Opens a page and waits until it answers to clicks.</summary>
    public async Task GoAsync(string path)
    {
        await Page.GotoAsync(path);
        await Page.WaitForFunctionAsync("() => window.Blazor !== undefined");
        await Page.WaitForLoadStateAsync(LoadState.NetworkIdle);
    }

    public ValueTask DisposeAsync() => _context.DisposeAsync();

    private void Note(bool isTrouble, string what)
    {
        if (isTrouble)
            lock (_troubles)
                _troubles.Add(what);
    }
}

[CollectionDefinition(Name)]
public sealed class OneStage : ICollectionFixture<Stage>
{
    public const string Name = "one server, one browser";
}
