using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures.Writing;
using Barshow.Engine.Names;

namespace Barshow.Engine.Specs;

/// <summary>What a variation does otherwise than the drink it grew from.</summary>
public static class SpecDifference
{
    /// <summary>One sentence for each difference, in the order of the spec: lines, method, glass, ice, garnish; empty when only names and words differ.</summary>
    /// <param name="parent">The drink it grew from.</param>
    /// <param name="variation">The variation.</param>
    /// <param name="shelf">Where ingredients get their names.</param>
    /// <param name="kit">Where glasses get their names.</param>
    public static IReadOnlyList<string> Sentences(Spec parent, Spec variation, IngredientShelf shelf, BarKit kit)
    {
        ArgumentNullException.ThrowIfNull(parent);
        ArgumentNullException.ThrowIfNull(variation);
        ArgumentNullException.ThrowIfNull(shelf);
        ArgumentNullException.ThrowIfNull(kit);
        var (before, after) = (parent.Lines.ToList(), variation.Lines.ToList());
        var sentences = new List<string>();
        foreach (var line in variation.Lines)
        {
            if (before.Find(each => Same(each, line)) is not { } its)
                continue;
            before.Remove(its);
            after.Remove(line);
            sentences.AddRange(OfLine(its, line, shelf));
        }

        AddReplaced(before, after, shelf, sentences);
        AddMaking(parent, variation, kit, sentences);
        return sentences;
    }

    private static bool Same(SpecLine one, SpecLine other) => one.Ingredient.IsEmpty || other.Ingredient.IsEmpty
        ? NameFolding.Fold(one.Name) == NameFolding.Fold(other.Name)
        : one.Ingredient == other.Ingredient;

    private static IEnumerable<string> OfLine(SpecLine before, SpecLine after, IngredientShelf shelf)
    {
        if (before.Planned != after.Planned)
            yield return $"{NameOf(after, shelf)}: {AmountOf(after)} instead of {AmountOf(before)}.";
        if (before.Use != after.Use)
            yield return $"{NameOf(after, shelf)} is {UseOf(after)} instead of {UseOf(before)}.";
        if (before.Optional != after.Optional)
            yield return $"{NameOf(after, shelf)} {(after.Optional ? "may be left out" : "may not be left out")}.";
    }

    // A spirit for a spirit, a juice for a juice is one exchange; what is left over is added or left out.
    private static void AddReplaced(List<SpecLine> before, List<SpecLine> after, IngredientShelf shelf, List<string> sentences)
    {
        foreach (var line in after.ToList())
        {
            var kind = shelf[line.Ingredient]?.Kind;
            if (kind is null || before.Find(each => shelf[each.Ingredient]?.Kind == kind) is not { } its)
                continue;
            before.Remove(its);
            after.Remove(line);
            sentences.Add($"{Upper($"{AmountOf(line)} {LowerNameOf(line, shelf)}")} instead of {AmountOf(its)} {LowerNameOf(its, shelf)}.");
        }

        sentences.AddRange(after.Select(line => $"Adds {AmountOf(line)} {LowerNameOf(line, shelf)}."));
        sentences.AddRange(before.Select(line => $"Leaves out {AmountOf(line)} {LowerNameOf(line, shelf)}."));
    }

    private static void AddMaking(Spec parent, Spec variation, BarKit kit, List<string> sentences)
    {
        if (parent.Method?.Kind != variation.Method?.Kind)
            sentences.Add($"{Upper(variation.Method?.Name ?? "no method")} instead of {parent.Method?.Name ?? "no method"}.");
        else if (parent.Method?.Seconds != variation.Method?.Seconds)
            sentences.Add($"{Upper(variation.Method!.Name)} {Seconds(variation.Method)} instead of {Seconds(parent.Method!)}.");
        if (parent.Serve.Glass != variation.Serve.Glass)
            sentences.Add($"{Upper(GlassOf(variation, kit))} instead of {GlassOf(parent, kit)}.");
        if (parent.Serve.Ice != variation.Serve.Ice)
            sentences.Add($"{Upper(IceOf(variation))} in the glass instead of {IceOf(parent)}.");
        if (NameFolding.Fold(parent.Garnish?.Text ?? "") != NameFolding.Fold(variation.Garnish?.Text ?? ""))
            sentences.Add($"Garnish: {variation.Garnish?.Text ?? "none"} instead of {parent.Garnish?.Text ?? "none"}.");
    }

    private static string Seconds(Method method) => method.Seconds is { } seconds ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{seconds} s") : "without a count";

    private static string GlassOf(Spec spec, BarKit kit) =>
        spec.Serve.Glass.IsEmpty ? "no glass" : kit.TryGetGlass(spec.Serve.Glass, out var glass) ? glass.Name.ToLowerInvariant() : spec.Serve.Glass.Text.Replace('-', ' ');

    private static string IceOf(Spec spec) => spec.Serve.Ice switch
    {
        IceKind.None => "no ice",
        IceKind.Cubed => "cubes",
        IceKind.Crushed => "crushed ice",
        _ => "one large piece",
    };

    private static string UseOf(SpecLine line) => line.Use.ToString().ToLowerInvariant();

    private static string AmountOf(SpecLine line) => line.Planned is { } measure ? MeasureWriter.Show(measure) : "an open amount of";

    private static string NameOf(SpecLine line, IngredientShelf shelf) => Upper(shelf[line.Ingredient]?.Name ?? line.Name);

    private static string LowerNameOf(SpecLine line, IngredientShelf shelf) => (shelf[line.Ingredient]?.Name ?? line.Name) is var name && name.Length > 1 && char.IsUpper(name[1]) ? name : name.ToLowerInvariant();

    private static string Upper(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
