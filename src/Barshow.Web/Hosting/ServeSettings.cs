namespace Barshow.Web.Hosting;

/// <summary>How the app serves.</summary>
/// <param name="DataFolder">Where the database lies; null for the per-user default.</param>
/// <param name="Port">The loopback port; null for the usual one, or the next that is free.</param>
/// <param name="StockAlone">Whether the very first start brings the stock library alone, without the demo bar.</param>
public sealed record ServeSettings(string? DataFolder = null, int? Port = null, bool StockAlone = false);
