using Barshow.Engine.Episodes;

namespace Barshow.Data.Rows;

/// <summary>The settings of the house; there is one row.</summary>
public sealed class HouseRow : Row<House>
{
    /// <summary>The name the one row is kept under.</summary>
    public const string Only = "house";

    /// <inheritdoc/>
    public override string SlugOf(House document) => Only;

    /// <inheritdoc/>
    protected override string NameOf(House document) => document.Name;

    /// <inheritdoc/>
    protected override void Describe(House document)
    {
    }
}
