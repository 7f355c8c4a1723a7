using Barshow.Engine.Findings;

namespace Barshow.Web.Drawing;

/// <summary>How a severity is said, styled and drawn: a small measure that is full, half or empty.</summary>
public static class SeverityWords
{
    private const string Cup = "<path d=\"M1.5 2.2 H14.5 L11.2 13.8 H4.8 Z\" class=\"cup\"/>";

    /// <summary>Its word: "Stop", "Fix", "Note".</summary>
    public static string Word(Severity severity) => severity.ToString();

    /// <summary>Its class in the style sheets.</summary>
    public static string Style(Severity severity) => severity switch { Severity.Stop => "stop", Severity.Fix => "fix", _ => "note" };

    /// <summary>The inside of its mark in a box of 16 × 16.</summary>
    public static string Mark(Severity severity) => severity switch
    {
        Severity.Stop => Cup + "<path d=\"M1.5 2.2 H14.5 L11.2 13.8 H4.8 Z\" class=\"in\"/>",
        Severity.Fix => Cup + "<path d=\"M3.1 8 H12.9 L11.2 13.8 H4.8 Z\" class=\"in\"/>",
        _ => Cup,
    };
}
