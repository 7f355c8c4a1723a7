using Barshow.Engine.Measures;

namespace Barshow.Engine.Specs.Analysis;

/// <summary>How full the glass is.</summary>
public sealed record WashLine
{
    /// <summary>The glass.</summary>
    public required Glass Glass { get; init; }

    /// <summary>How full it should be, as a share of the brim.</summary>
    public required double Wanted { get; init; }

    /// <summary>Grams of ice that usually go into it.</summary>
    public required Interval IceGrams { get; init; }

    /// <summary>Millilitres below the line that the ice takes, what melts in the glass left out.</summary>
    public required Interval IceMillilitres { get; init; }

    /// <summary>Millilitres of liquid as served, water from ice with it.</summary>
    public required Interval LiquidMillilitres { get; init; }

    /// <summary>How full the glass is, as a share of the brim; above 1 it runs over.</summary>
    public required Interval Level { get; init; }

    /// <summary>Millilitres left for a top-up below the wanted line before anything is topped; below nought when it already stands above.</summary>
    public required Interval RoomForTopMillilitres { get; init; }

    /// <summary>Grams of ice with which the drink, its stated top-up in it, stands exactly at the wanted line; null without ice, or where the liquid alone stands above.</summary>
    public double? IceGramsToTheLine { get; init; }

    /// <summary>Millilitres the spec tops up with by its own word; null when no line states one.</summary>
    public double? StatedTopMillilitres { get; init; }

    /// <summary>Whether the stated top-up stays below the brim with the least ice that usually goes in; null when none is stated.</summary>
    public bool? StatedTopFits { get; init; }

    /// <summary>Grams of ice that leave room for exactly the stated top-up below the wanted line; null when none is stated, without ice, or when not even a glass without ice has the room.</summary>
    public double? IceGramsForStatedTop { get; init; }
}
