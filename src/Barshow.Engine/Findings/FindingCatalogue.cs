using System.Reflection;

namespace Barshow.Engine.Findings;

/// <summary>Every kind of finding in the product, each with its severity. Help's list of checks is made from it.</summary>
/// <remarks>One file for each engine folder: <c>FindingCatalogue.Measures.cs</c> and so on.</remarks>
public static partial class FindingCatalogue
{
    private static readonly Lazy<IReadOnlyList<FindingKind>> Listed = new(() =>
        [.. typeof(FindingCatalogue)
            .GetProperties(BindingFlags.Public | BindingFlags.Static)
            .Where(property => property.PropertyType == typeof(FindingKind))
            .Select(property => (FindingKind)property.GetValue(null)!)
            .OrderBy(kind => kind.Name, StringComparer.Ordinal)]);

    /// <summary>All kinds, by name.</summary>
    public static IReadOnlyList<FindingKind> All => Listed.Value;
}
