namespace Barshow.Web.Components;

/// <summary>Which way a callout is set.</summary>
public enum CalloutKind
{
    /// <summary>In a line: 1½ oz · 45 ml.</summary>
    Inline,

    /// <summary>In a grid: first unit above a brass line, second below.</summary>
    Stacked,

    /// <summary>At the bench: large, side by side with an upright brass bar.</summary>
    Bench,
}
