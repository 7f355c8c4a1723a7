using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Data.Rows;

/// <summary>A saved drink of the library.</summary>
public sealed class DrinkRow : Row<Spec>
{
    /// <summary>Its name and other names, folded, one a line.</summary>
    public string Folded { get; private set; } = "";

    /// <summary>The family; empty when none is named.</summary>
    public string Family { get; private set; } = "";

    /// <summary>The method; null when it was not said.</summary>
    public MethodKind? Method { get; private set; }

    /// <summary>The glass; empty when none is named.</summary>
    public string Glass { get; private set; } = "";

    /// <summary>The drink it is a variation of; empty for none.</summary>
    public string Parent { get; private set; } = "";

    /// <inheritdoc/>
    public override string SlugOf(Spec document) => document.Slug.Text;

    /// <inheritdoc/>
    protected override string NameOf(Spec document) => document.Name;

    /// <inheritdoc/>
    protected override void Describe(Spec document)
    {
        Folded = string.Join('\n', document.Aliases.Prepend(document.Name).Select(NameFolding.Fold).Distinct());
        Family = document.Family;
        Method = document.Method?.Kind;
        Glass = document.Serve.Glass.Text;
        Parent = document.Parent.Text;
    }
}
