using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;

namespace Barshow.Engine.Specs.Reading.Recipes;

/// <summary>Reads one recipe as it is pasted: its name, its ingredient lines, then method, glass and garnish in a closing line or in sentences.</summary>
/// <remarks>
/// Each line is taken for what it looks like (<see cref="RecipeLineRoles"/>) unless the caller says what it is. Linear in the length of the text;
/// 20,000 characters and 200 lines are read, the rest is left out with a finding.
/// </remarks>
public static class RecipeReader
{
    /// <summary>How many characters are read.</summary>
    public const int MostCharacters = 20_000;

    /// <summary>How many lines are read.</summary>
    public const int MostLines = 200;

    /// <summary>The name of a drink whose recipe names none.</summary>
    public const string Nameless = "Drink without a name";

    /// <summary>Reads a recipe.</summary>
    /// <param name="text">The recipe.</param>
    /// <param name="shelf">Where its ingredients are looked up.</param>
    /// <param name="kit">Where its glass is looked up.</param>
    /// <param name="corrected">Roles that the user gave to lines, by their number; null for none.</param>
    public static ReadRecipe Read(string text, IngredientShelf shelf, BarKit kit, IReadOnlyDictionary<int, RecipeRole>? corrected = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(shelf);
        ArgumentNullException.ThrowIfNull(kit);
        var findings = new List<Finding>();
        var lines = Cut(text, findings);
        var roles = RecipeLineRoles.Of(lines, shelf, corrected);
        var name = Name(lines, roles);
        var drink = name ?? Nameless;

        var (finish, finishLine) = FinishOf(lines, roles, shelf, kit);
        var read = lines.Select((line, i) => ReadOne(line, roles[i], drink, shelf, finish?.Method?.Kind)).ToList();
        AddFinishFindings(read, finish, finishLine, drink);

        var ingredients = read.Where(line => line.Line is not null).ToList();
        if (lines.Count == 0)
            return new(null, [], findings);
        if (ingredients.Count == 0)
            return new(null, read, [.. findings, RecipeSentences.WithoutIngredients(drink)]);
        if (name is null)
            findings.Add(RecipeSentences.WithoutName());
        if (finish is null)
            findings.Add(RecipeSentences.WithoutMethod(drink));
        return new(ToSpec(drink, read, finish), read, findings);
    }

    private static List<(int Number, string Text)> Cut(string text, List<Finding> findings)
    {
        if (text.Length > MostCharacters)
        {
            findings.Add(RecipeSentences.TooLong());
            text = text[..MostCharacters];
        }

        var lines = text.ReplaceLineEndings("\n").Split('\n').Select((line, i) => (Number: i + 1, Text: RecipeText.Plain(line))).Where(line => line.Text.Length > 0).ToList();
        if (lines.Count <= MostLines)
            return lines;
        if (findings.Count == 0)
            findings.Add(RecipeSentences.TooLong());
        return lines[..MostLines];
    }

    private static string? Name(List<(int Number, string Text)> lines, RecipeRole[] roles)
    {
        var at = Array.IndexOf(roles, RecipeRole.Name);
        if (at < 0)
            return null;
        var name = RecipeText.AfterKey(lines[at].Text).Trim().TrimEnd(':', '.').Trim();
        return name.Length == 0 ? null : name.Length <= 120 ? name : name[..120];
    }

    // A closing line in short says it all; sentences are gone through for the same.
    private static (Finish? Finish, int Line) FinishOf(List<(int Number, string Text)> lines, RecipeRole[] roles, IngredientShelf shelf, BarKit kit)
    {
        var said = lines.Where((_, i) => roles[i] == RecipeRole.Finish).ToList();
        var steps = lines.Where((_, i) => roles[i] == RecipeRole.Step).Select(line => line.Text);
        var text = RecipeText.ClosingLine([.. said.Select(line => line.Text)], [.. steps]);
        return text.Length == 0 ? (null, 0) : (FinishReader.Read(text, kit, shelf), said.Count == 1 ? said[0].Number : 0);
    }

    private static RecipeLine ReadOne((int Number, string Text) line, RecipeRole role, string drink, IngredientShelf shelf, MethodKind? method)
    {
        if (role != RecipeRole.Ingredient)
            return new(line.Number, line.Text, role, null, []);
        var (read, said) = SpecLineReader.Read(line.Text, shelf, method);
        var findings = said.ToList();
        if (!findings.Exists(finding => finding.Kind == FindingCatalogue.LineUnreadable) && read.Ingredient.IsEmpty)
            findings.Add(RecipeSentences.Unknown(read.Name, drink, line.Text));
        return new(line.Number, line.Text, role, read, [.. findings.Select(finding => finding with { Drink = drink, Line = line.Number })]);
    }

    private static void AddFinishFindings(List<RecipeLine> read, Finish? finish, int finishLine, string drink)
    {
        var at = read.FindIndex(line => line.Number == finishLine);
        if (finish is null || at < 0)
            return;
        read[at] = read[at] with { Findings = [.. finish.Findings.Select(finding => finding with { Drink = drink, Line = finishLine, Place = null })] };
    }

    private static Spec ToSpec(string name, List<RecipeLine> read, Finish? finish)
    {
        var sources = read.Where(line => line.Role == RecipeRole.Source).Select(line => RecipeText.AfterKey(line.Text)).ToList();
        return new()
        {
            Slug = Slug.Of(name),
            Name = name,
            Lines = [.. read.Where(line => line.Line is not null).Select(line => sources.Count > 0 ? Cited(line.Line!) : line.Line!)],
            Method = finish?.Method,
            Serve = finish?.Serve ?? new(),
            Garnish = finish?.Garnish,
            Steps = [.. read.Where(line => line.Role == RecipeRole.Step).Select(line => RecipeText.AfterKey(line.Text)).Where(step => step.Length > 0)],
            Sources = sources,
            Notes = [.. read.Where(line => line.Role == RecipeRole.Note).Select(line => RecipeText.AfterKey(line.Text))],
        };
    }

    // The amounts of a recipe that names its source are the source's until someone changes them.
    private static SpecLine Cited(SpecLine line) => line with
    {
        Amounts = [.. line.Amounts.Select(amount => amount.Layer == AmountLayer.Library ? amount with { Layer = AmountLayer.Source } : amount)],
    };
}
