namespace Barshow.Engine.Measures;

/// <summary>What the bar's own small measures hold, in millilitres. No standard fixes them: they are a house setting.</summary>
public sealed record BarSizes
{
    /// <summary>The sizes a house starts with.</summary>
    public static BarSizes Default { get; } = new();

    /// <summary>One dash from a bitters bottle. Common practice, no source: 0.6 to 1.0 ml.</summary>
    public Rational Dash { get; init; } = new(4, 5);

    /// <summary>One barspoon. Common practice, no source: 2.5 to 5 ml, 5 in most books.</summary>
    public Rational Barspoon { get; init; } = 5;

    /// <summary>One splash. Common practice, no source: 5 to 10 ml.</summary>
    public Rational Splash { get; init; } = new(15, 2);

    /// <summary>One drop: 0.05 ml of water from a medicine dropper (USP 32, chapter 1101); smaller for tinctures.</summary>
    public Rational Drop { get; init; } = new(1, 20);

    /// <summary>One shot. No standard fixes it: 25 or 35 ml in the United Kingdom, 30 in Australia, 44 in the United States; common practice, no source.</summary>
    public Rational Shot { get; init; } = 45;

    /// <summary>The white of one egg of medium size. Common practice, no source: 25 to 35 ml.</summary>
    public Rational EggWhite { get; init; } = 30;
}
