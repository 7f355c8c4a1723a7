using Barshow.Engine.Specs;

namespace Barshow.Data.Rows;

/// <summary>Glasses, jiggers and tools; there is one row.</summary>
public sealed class KitRow : Row<BarKit>
{
    /// <summary>The name the one row is kept under.</summary>
    public const string Only = "kit";

    /// <inheritdoc/>
    public override string SlugOf(BarKit document) => Only;

    /// <inheritdoc/>
    protected override string NameOf(BarKit document) => "Bar kit";

    /// <inheritdoc/>
    protected override void Describe(BarKit document)
    {
    }
}
