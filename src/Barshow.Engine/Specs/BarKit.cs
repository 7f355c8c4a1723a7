using System.Diagnostics.CodeAnalysis;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;

namespace Barshow.Engine.Specs;

/// <summary>What stands on the bar: glasses, jiggers, tools.</summary>
public sealed record BarKit
{
    /// <summary>The glasses.</summary>
    public IReadOnlyList<Glass> Glasses { get; init; } = [];

    /// <summary>The jiggers, each with its marks.</summary>
    public IReadOnlyList<Jigger> Jiggers { get; init; } = [];

    /// <summary>Shakers, strainers, muddlers and the like.</summary>
    public IReadOnlyList<Tool> Tools { get; init; } = [];

    /// <summary>The glass of that slug.</summary>
    public bool TryGetGlass(Slug slug, [NotNullWhen(true)] out Glass? glass)
    {
        glass = Glasses.FirstOrDefault(candidate => candidate.Slug == slug);
        return glass is not null;
    }

    /// <summary>The glass a person means by a name: "coupe", "coupe glass", "a chilled coupe".</summary>
    public Glass? GlassNamed(string name)
    {
        var folded = NameFolding.Fold(name);
        return Find(folded) ?? Find(folded.Replace(" glass", "", StringComparison.Ordinal));

        Glass? Find(string text) => Glasses.FirstOrDefault(glass =>
            NameFolding.Fold(glass.Name) == text || glass.Aliases.Any(alias => NameFolding.Fold(alias) == text));
    }
}

/// <summary>A jigger.</summary>
/// <param name="Name">What it is called at the bench.</param>
/// <param name="Marks">The amounts it shows, its brim among them; volumes.</param>
/// <param name="Count">How many there are.</param>
public sealed record Jigger(string Name, IReadOnlyList<Measure> Marks, int Count = 1);

/// <summary>A tool.</summary>
/// <param name="Slug">The name it is kept under.</param>
/// <param name="Name">The name that is shown.</param>
/// <param name="Count">How many there are.</param>
public sealed record Tool(Slug Slug, string Name, int Count = 1);
