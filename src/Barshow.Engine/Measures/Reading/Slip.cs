namespace Barshow.Engine.Measures.Reading;

/// <summary>Letters that a scanner or a hurried hand puts for figures.</summary>
internal static class Slip
{
    /// <summary>The figure that a letter stands for; null when it stands for none.</summary>
    public static int? FigureFor(char letter) => letter switch
    {
        'I' or 'l' or '|' => 1,
        'O' or 'o' => 0,
        'S' => 5,
        'Z' => 2,
        'B' => 8,
        _ => null,
    };
}
