using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Planning.Ice;

/// <summary>The ice of a shoot, by kind, and its water.</summary>
/// <param name="Kinds">One for each kind of ice that is used.</param>
/// <param name="WaterMillilitres">Water that goes into drinks and house preps, ice apart.</param>
public sealed record IceList(IReadOnlyList<IceDemand> Kinds, double WaterMillilitres)
{
    /// <summary>Grams of ice in all, melt counted.</summary>
    public double Grams => Kinds.Sum(kind => kind.Grams);
}

/// <summary>How much of one kind of ice.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="UsedGrams">What goes into tins, mixing glasses and glasses.</param>
/// <param name="Parts">Which drink uses how much, in lineup order.</param>
public sealed record IceDemand(IceKind Kind, double UsedGrams, IReadOnlyList<IcePart> Parts)
{
    /// <summary>What melts, is rinsed with and stands in the well, as a share of what is used. Common practice, no source: a half more.</summary>
    public const double MeltShare = 0.5;

    /// <summary>Grams to have, melt counted.</summary>
    public double Grams => UsedGrams * (1 + MeltShare);

    /// <summary>The same in kilograms.</summary>
    public double Kilograms => Grams / 1000;
}

/// <summary>The ice of one drink.</summary>
/// <param name="Drink">The drink.</param>
/// <param name="Name">Its name.</param>
/// <param name="Grams">All makings together.</param>
public sealed record IcePart(Slug Drink, string Name, double Grams);
