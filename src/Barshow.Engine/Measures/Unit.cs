using System.Diagnostics.CodeAnalysis;

namespace Barshow.Engine.Measures;

/// <summary>What a unit counts.</summary>
public enum UnitKind
{
    /// <summary>A volume fixed by a standard or by the convention.</summary>
    Volume,

    /// <summary>A bar's own small volume, a house setting.</summary>
    Bar,

    /// <summary>A mass.</summary>
    Mass,

    /// <summary>Things counted: leaves, wedges, eggs.</summary>
    Count,

    /// <summary>A share of the whole.</summary>
    Part,
}

/// <summary>A unit under our own name. Every unit is one of <see cref="All"/>; names are what the database and the archive hold.</summary>
public sealed partial class Unit
{
    private Unit(string name, string spoken, string spokenMany, UnitKind kind)
    {
        Name = name;
        Spoken = spoken;
        SpokenMany = spokenMany;
        Kind = kind;
        Known.Add(name, this);
    }

    /// <summary>The canonical name, singular: "oz", "ml", "leaf".</summary>
    public string Name { get; }

    /// <summary>As it is said of one: "ounce".</summary>
    public string Spoken { get; }

    /// <summary>As it is said of many: "ounces".</summary>
    public string SpokenMany { get; }

    /// <summary>What it counts.</summary>
    public UnitKind Kind { get; }

    /// <summary>Whether amounts are written as decimals ("22.5 ml") rather than with fractions ("¾ oz").</summary>
    public bool IsDecimal { get; private init; }

    /// <summary>Whether it is said with "an": "half an ounce".</summary>
    internal bool TakesAn => Spoken[0] is 'a' or 'e' or 'i' or 'o';

    /// <summary>An abbreviation, written the same of one and of many; null when the unit is written in full.</summary>
    private string? Abbreviation { get; init; }

    /// <summary>Millilitres in one, where that does not depend on the convention or the house.</summary>
    public Rational? Millilitres { get; private init; }

    /// <summary>Whether it is a metric volume: millilitre, centilitre, decilitre, litre.</summary>
    public bool IsMetric => Kind == UnitKind.Volume && Millilitres is not null && IsDecimal;

    /// <summary>Fluid ounces in one, where the convention fixes the ounce.</summary>
    public Rational? Ounces { get; private init; }

    /// <summary>Fluid ounces in one under the imperial convention, where they differ.</summary>
    private Rational? ImperialOunces { get; init; }

    /// <summary>Grams in one, for a mass.</summary>
    public Rational? Grams { get; private init; }

    /// <summary>Which of the house's own sizes it is.</summary>
    private Func<BarSizes, Rational>? HouseSize { get; init; }

    /// <summary>Every unit, in the order they are defined.</summary>
    public static IReadOnlyCollection<Unit> All => Known.Values;

    /// <summary>Millilitres in one under a convention and a house's sizes, exactly; null when it is no volume.</summary>
    public Rational? MillilitresUnder(Convention convention, BarSizes? sizes = null) =>
        Millilitres
        ?? (OuncesUnder(convention) is { } ounces ? ounces * convention.MillilitresPerOunce() : HouseSize?.Invoke(sizes ?? BarSizes.Default));

    /// <summary>As it is written after an amount: "oz" of any, "dash" of one or less, "dashes" of more.</summary>
    public string Written(Rational amount) => Abbreviation ?? (amount > Rational.One ? SpokenMany : Spoken);

    /// <summary>The unit of that canonical name.</summary>
    public static bool TryNamed(string name, [NotNullWhen(true)] out Unit? unit) => Known.TryGetValue(name, out unit);

    /// <summary>The unit of that canonical name.</summary>
    /// <exception cref="ArgumentException">There is none.</exception>
    public static Unit Named(string name) =>
        TryNamed(name, out var unit) ? unit : throw new ArgumentException($"There is no unit \"{name}\".", nameof(name));

    /// <inheritdoc/>
    public override string ToString() => Name;

    private Rational? OuncesUnder(Convention convention) => convention == Convention.ImperialExact ? ImperialOunces ?? Ounces : Ounces;
}
