using System.Collections.Frozen;
using System.Reflection;
using System.Text.RegularExpressions;

namespace Barshow.Web.Look;

/// <summary>The outline icons, read once from the program itself.</summary>
public static partial class IconFiles
{
    private static readonly FrozenDictionary<string, string> Drawn = Read();

    /// <summary>The inside of an icon in a box of 24 × 24.</summary>
    /// <exception cref="ArgumentException">There is no icon of that name.</exception>
    public static string Inside(string name) =>
        Drawn.TryGetValue(name, out var inside) ? inside : throw new ArgumentException($"There is no icon \"{name}\".", nameof(name));

    private static FrozenDictionary<string, string> Read()
    {
        var program = Assembly.GetExecutingAssembly();
        return program.GetManifestResourceNames()
            .Where(resource => resource.StartsWith("icons/", StringComparison.Ordinal))
            .ToFrozenDictionary(resource => resource["icons/".Length..], resource =>
            {
                using var reader = new StreamReader(program.GetManifestResourceStream(resource)!);
                return Frame().Match(reader.ReadToEnd()).Groups["inside"].Value;
            });
    }

    [GeneratedRegex("<svg[^>]*>(?<inside>.*)</svg>", RegexOptions.Singleline)]
    private static partial Regex Frame();
}
