using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Barshow.Data;
using Barshow.Data.Opening;
using Barshow.Web.Bench;
using Barshow.Web.Desk;
using Barshow.Web.Look;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using MudBlazor.Services;

namespace Barshow.Web.Hosting;

/// <summary>Builds the web application.</summary>
public static class WebHost
{
    private const int UsualPort = 5230;
    private const long LongestMessage = 3L << 20;

    /// <summary>The application, ready to run; it listens on loopback only.</summary>
    public static WebApplication Build(ServeSettings settings, string[] args)
    {
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(args);
        var builder = WebApplication.CreateBuilder(Options(args));
        var folder = DataFolder.Resolve(settings.DataFolder);
        builder.WebHost.UseUrls(string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{settings.Port ?? FreePort()}"));
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.AddServerHeader = false);
        KeepLogsQuiet(builder.Logging);
        // Another site's page must not reach the app under a name of its own that points here.
        builder.Configuration["AllowedHosts"] = "localhost;127.0.0.1;[::1]";
        AddServices(builder.Services, folder);
        builder.Services.AddSingleton(settings);

        var app = builder.Build();
        Route(app);
        app.Lifetime.ApplicationStarted.Register(() => SayWhere(app));
        return app;
    }

    private static void AddServices(IServiceCollection services, DataFolder folder)
    {
        services.AddBarshowData(folder);
        services.AddHostedService<OpeningService>();
        services.AddDataProtection().SetApplicationName("Barshow").PersistKeysToFileSystem(new(Path.Combine(folder.Path, "keys")));
        services.AddHealthChecks();
        services.AddHttpContextAccessor();
        services.AddMudServices();
        services.AddScoped<ThemeChoice>();
        services.AddSingleton<ShootPlans>();
        services.AddScoped<EpisodeDesk>();
        services.AddScoped<Bin>();
        // A pasted page or brief travels in one message; the framework's own bound of 32 kB would end the circuit.
        services.AddRazorComponents().AddInteractiveServerComponents().AddHubOptions(options => options.MaximumReceiveMessageSize = LongestMessage);
    }

    private static void Route(WebApplication app)
    {
        app.UseSecurityHeaders(PageHeaders.Policy());
        app.UseExceptionHandler("/problem", createScopeForErrors: true);
        app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
        app.UseAntiforgery();
        app.MapStaticAssets();
        app.MapHealthChecks("/health");
        Downloads.Map(app);
        BenchEndpoints.Map(app);
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode(options => options.ContentSecurityFrameAncestorsPolicy = null);
    }

    // From source the static files lie where the build's manifest says, and the framework reads it in Development only; a published app has them beside it.
    private static WebApplicationOptions Options(string[] args)
    {
        var fromSource = File.Exists(Path.Combine(AppContext.BaseDirectory, "Barshow.Web.staticwebassets.runtime.json"));
        return new()
        {
            Args = args,
            ApplicationName = typeof(WebHost).Assembly.GetName().Name,
            ContentRootPath = Array.Exists(args, arg => arg.StartsWith("--contentRoot", StringComparison.OrdinalIgnoreCase)) ? null : AppContext.BaseDirectory,
            EnvironmentName = Environment.GetEnvironmentVariable("ASPNETCORE_ENVIRONMENT") ?? (fromSource ? Environments.Development : Environments.Production),
        };
    }

    private static void KeepLogsQuiet(ILoggingBuilder logging)
    {
        logging.ClearProviders();
        logging.AddSimpleConsole(options => options.SingleLine = true);
        logging.Services.Configure<Microsoft.Extensions.Logging.Console.ConsoleLoggerOptions>(options => options.LogToStandardErrorThreshold = LogLevel.Trace);
        logging.SetMinimumLevel(LogLevel.Warning);
        // Keys of a program that listens on this computer alone lie in the user's own folder; the address is ours to print.
        logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        logging.AddFilter("Microsoft.AspNetCore.Server.Kestrel", LogLevel.Error);
    }

    private static int FreePort()
    {
        for (var port = UsualPort; port < UsualPort + 50; port++)
        {
            using var listener = new TcpListener(IPAddress.Loopback, port);
            try
            {
                listener.Start();
                return port;
            }
            catch (SocketException)
            {
                // Taken: the next one.
            }
        }

        return 0;
    }

    private static void SayWhere(WebApplication app)
    {
        var addresses = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()?.Addresses ?? [];
        foreach (var address in addresses)
            Console.WriteLine($"Barshow is open at {address}. Ctrl+C closes it.");
    }
}
