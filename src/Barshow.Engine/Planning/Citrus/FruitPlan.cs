using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Planning.Citrus;

/// <summary>The fewest whole fruit that cover a lineup, and how each is used.</summary>
/// <param name="Fruit">The fruit.</param>
/// <param name="Need">What was asked of it.</param>
/// <param name="Whole">How many whole fruit that takes.</param>
/// <param name="Uses">How they are used, alike fruit together; the counts add up to <paramref name="Whole"/>.</param>
public sealed record FruitPlan(Ingredient Fruit, FruitNeed Need, int Whole, IReadOnlyList<FruitUse> Uses)
{
    /// <summary>Which drinks need it, and how much, in lineup order.</summary>
    public IReadOnlyList<Demand.DemandPart> Parts { get; init; } = [];

    /// <summary>What the plan has to say.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>Millilitres of juice the pressed halves give beyond the need.</summary>
    public double SpareJuiceMillilitres { get; init; }

    /// <summary>Halves that are pressed: as many spent shells are free for garnish.</summary>
    public int SpentShells => Uses.Sum(use => use.Count * use.Halves.Count(half => half.Pressed));
}

/// <summary>What is asked of one fruit.</summary>
/// <param name="JuiceMillilitres">Millilitres of juice.</param>
/// <param name="Cuts">How many of each cut; a null cut counts whole fruit.</param>
/// <param name="Shells">Spent half shells wanted for garnish; they cost no fruit as long as that many halves are pressed.</param>
public sealed record FruitNeed(double JuiceMillilitres, IReadOnlyDictionary<CutKey, double> Cuts, int Shells = 0);

/// <summary>A cut as a key; <c>default</c> stands for whole fruit.</summary>
/// <param name="Cut">The cut, null for whole fruit.</param>
public readonly record struct CutKey(Unit? Cut) : IComparable<CutKey>
{
    /// <inheritdoc/>
    public int CompareTo(CutKey other) => string.CompareOrdinal(Cut?.Name, other.Cut?.Name);

    /// <inheritdoc/>
    public override string ToString() => Cut?.Name ?? "whole";
}

/// <summary>Fruit that are used alike.</summary>
/// <param name="Count">How many.</param>
/// <param name="Halves">What becomes of the two halves; both alike for a fruit used for one thing.</param>
public sealed record FruitUse(int Count, IReadOnlyList<HalfUse> Halves)
{
    /// <summary>As a mise list shows it: "peel for twists, then press", "half cut in wedges, half pressed".</summary>
    public string Words => Halves[0] == Halves[1] ? Halves[0].Words : $"half {Halves[0].Done}, half {Halves[1].Done}";
}

/// <summary>What becomes of half a fruit.</summary>
/// <param name="Pressed">Whether it is pressed; else it is cut.</param>
/// <param name="Cut">For a pressed half the peel cut taken first, null for none; for another the cut.</param>
public readonly record struct HalfUse(bool Pressed, Unit? Cut)
{
    internal string Words => (Pressed, Cut) switch
    {
        (true, null) => "press",
        (true, { } peel) => $"peel for {peel.SpokenMany}, then press",
        (false, null) => "use whole",
        (false, { } cut) => $"cut in {cut.SpokenMany}",
    };

    internal string Done => (Pressed, Cut) switch
    {
        (true, null) => "pressed",
        (true, { } peel) => $"peeled for {peel.SpokenMany} and pressed",
        (false, null) => "used as it is",
        (false, { } cut) => $"cut in {cut.SpokenMany}",
    };
}
