namespace Barshow.Web.Hosting;

/// <summary>Builds the web application.</summary>
public static class WebHost
{
    /// <summary>The application, ready to run; it listens on loopback only.</summary>
    public static WebApplication Build(ServeSettings settings, string[] args)
    {
        ArgumentNullException.ThrowIfNull(settings);
        var builder = WebApplication.CreateBuilder(args);
        builder.WebHost.UseUrls($"http://127.0.0.1:{settings.Port ?? 5230}");
        return builder.Build();
    }
}
