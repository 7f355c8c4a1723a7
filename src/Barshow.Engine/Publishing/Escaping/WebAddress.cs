using System.Diagnostics.CodeAnalysis;

namespace Barshow.Engine.Publishing.Escaping;

/// <summary>Addresses that may stand in what is published: absolute, http or https.</summary>
public static class WebAddress
{
    /// <summary>The address in its escaped ASCII form.</summary>
    public static bool TryRead(string? text, [NotNullWhen(true)] out string? address)
    {
        address = null;
        if (string.IsNullOrWhiteSpace(text) || text.Length > 2000)
            return false;
        if (!Uri.TryCreate(PlainText.Line(text), UriKind.Absolute, out var uri) || (uri.Scheme != Uri.UriSchemeHttp && uri.Scheme != Uri.UriSchemeHttps) || uri.Host.Length == 0)
            return false;
        address = uri.AbsoluteUri;
        return true;
    }

    /// <summary>A page under a base address; null when the base is no address.</summary>
    /// <param name="site">The base: "https://example.org/drinks".</param>
    /// <param name="path">The path below it, of slugs and file names only.</param>
    public static string? Under(string? site, string path) =>
        TryRead(site, out var address) ? address.TrimEnd('/') + "/" + path : null;
}
