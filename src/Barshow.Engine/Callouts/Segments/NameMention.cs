namespace Barshow.Engine.Callouts.Segments;

/// <summary>How a drink is named.</summary>
internal enum Naming
{
    /// <summary>In passing: beside another, in a list, in a teaser.</summary>
    Passing,

    /// <summary>Plainly.</summary>
    Plain,

    /// <summary>As what is made now.</summary>
    Opening,
}

/// <summary>A drink's name in the speech.</summary>
/// <param name="Drink">The drink, by its place in the lineup.</param>
/// <param name="From">The first word.</param>
/// <param name="To">The word after the last.</param>
/// <param name="Naming">How it is named.</param>
internal readonly record struct NameMention(int Drink, int From, int To, Naming Naming);
