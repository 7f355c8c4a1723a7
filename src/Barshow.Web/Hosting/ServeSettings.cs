namespace Barshow.Web.Hosting;

/// <summary>How the app serves.</summary>
/// <param name="DataFolder">Where the database lies; null for the per-user default.</param>
/// <param name="Port">The loopback port; null for the usual one, or the next that is free.</param>
public sealed record ServeSettings(string? DataFolder = null, int? Port = null);
