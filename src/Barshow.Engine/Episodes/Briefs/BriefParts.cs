namespace Barshow.Engine.Episodes.Briefs;

/// <summary>A piece of a brief with the line it stands on, counted from 1.</summary>
internal readonly record struct BriefText(string Text, int Line);

/// <summary>A key and its value.</summary>
internal readonly record struct BriefKey(string Key, string Value, int Line);

/// <summary>One drink of a brief, cut into its parts but not yet understood.</summary>
internal sealed class DrinkParts(BriefText name)
{
    public BriefText Name { get; } = name;

    public List<IngredientParts> Lines { get; } = [];

    /// <summary>Method, glass and garnish; null until the closing line is known.</summary>
    public BriefText? Finish { get; set; }

    public List<BriefKey> Keys { get; } = [];
}

/// <summary>An ingredient line and the amount of the cited source under it.</summary>
internal sealed class IngredientParts(BriefText line)
{
    public BriefText Line { get; } = line;

    public BriefText? Was { get; set; }
}

/// <summary>A brief cut into its parts, from text or from JSON.</summary>
internal sealed class BriefParts
{
    public BriefText? Title { get; set; }

    public List<BriefKey> Keys { get; } = [];

    public List<DrinkParts> Drinks { get; } = [];
}
