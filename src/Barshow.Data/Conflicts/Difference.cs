namespace Barshow.Data.Conflicts;

/// <summary>Whose state of a field.</summary>
public enum Side
{
    /// <summary>The one that is being saved.</summary>
    Mine,

    /// <summary>The one that was saved meanwhile.</summary>
    Theirs,
}

/// <summary>A field that is different in the two states.</summary>
/// <param name="Path">Which field, to choose it by: <c>lines[white rum].amounts[library].measure</c>.</param>
/// <param name="Label">Which field, in plain words: "Lines › white rum › library › measure".</param>
/// <param name="Before">What it was when both began, in plain words; "nothing" where it was not set.</param>
/// <param name="Mine">What it is in the state that is being saved.</param>
/// <param name="Theirs">What it is in the state that was saved meanwhile.</param>
/// <param name="Clash">Whether both changed it, so that one of them must give way.</param>
/// <param name="Usual">The side that is taken unless another is chosen: the one that changed it; mine where both did.</param>
public sealed record Difference(string Path, string Label, string Before, string Mine, string Theirs, bool Clash, Side Usual);
