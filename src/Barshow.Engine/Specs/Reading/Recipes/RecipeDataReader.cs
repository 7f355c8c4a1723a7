using System.Net;
using System.Text;
using System.Text.Json;
using Barshow.Engine.Findings;

namespace Barshow.Engine.Specs.Reading.Recipes;

/// <summary>A recipe found in a page's data, written out as one that was typed, to be confirmed line by line.</summary>
/// <param name="Name">The name the page gives it.</param>
/// <param name="Text">Name, ingredient lines, steps and source as <see cref="RecipeReader"/> reads them.</param>
public sealed record FoundRecipe(string Name, string Text);

/// <summary>What was found in a page or file.</summary>
/// <param name="Recipes">The recipes, in order; at most 20.</param>
/// <param name="Findings">Why there is none; empty when there is one.</param>
public sealed record RecipeData(IReadOnlyList<FoundRecipe> Recipes, IReadOnlyList<Finding> Findings);

/// <summary>Finds schema.org Recipes as JSON-LD in the source of a page or in bare JSON.</summary>
/// <remarks>
/// Understood are a Recipe alone, in a list, or in a <c>@graph</c>; <c>recipeIngredient</c> (and the older <c>ingredients</c>); <c>recipeInstructions</c> as text, a list of texts,
/// HowToStep or HowToSection (<see href="https://schema.org/Recipe"/>, <see href="https://www.w3.org/TR/json-ld11/#embedding-json-ld-in-html-documents"/>).
/// A page may be hostile: 2 MB, 50 scripts, 32 levels and 20 recipes are read; nothing of it is run, fetched or kept as markup.
/// </remarks>
public static class RecipeDataReader
{
    /// <summary>How many characters of a page are read.</summary>
    public const int MostCharacters = 2_000_000;

    private const int MostScripts = 50;
    private const int Deepest = 32;
    private const int MostRecipes = 20;
    private const int MostItems = 100;

    private static readonly JsonDocumentOptions Lenient = new() { MaxDepth = Deepest, AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip };

    /// <summary>Whether a text is the source of a page, or JSON, and no recipe that was typed.</summary>
    public static bool LooksLikeData(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var start = text.AsSpan().TrimStart("\ufeff \t\r\n");
        return start.Length > 0 && (start[0] is '{' || start.StartsWith("[{", StringComparison.Ordinal) || (start[0] is '[' && start[1..].TrimStart() is ['{', ..])
            || start.StartsWith("<!doctype", StringComparison.OrdinalIgnoreCase) || start.StartsWith("<html", StringComparison.OrdinalIgnoreCase) || start.StartsWith("<script", StringComparison.OrdinalIgnoreCase)
            || text.Contains("application/ld+json", StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>Finds the recipes.</summary>
    public static RecipeData Read(string page)
    {
        ArgumentNullException.ThrowIfNull(page);
        if (page.Length > MostCharacters)
            return new([], [RecipeSentences.DataTooLarge(page.Length)]);
        var found = new List<FoundRecipe>();
        var isBroken = false;
        foreach (var json in Documents(page))
        {
            try
            {
                using var document = JsonDocument.Parse(json, Lenient);
                Gather(document.RootElement, found);
            }
            catch (Exception problem) when (problem is JsonException or InvalidOperationException)
            {
                // Broken JSON, or half a surrogate pair in one of its texts.
                isBroken = true;
            }
        }

        return new(found, found.Count > 0 ? [] : [isBroken ? RecipeSentences.DataBroken() : RecipeSentences.DataMissing()]);
    }

    private static IEnumerable<string> Documents(string page)
    {
        var bare = page.Trim('\ufeff', ' ', '\t', '\r', '\n');
        if (bare is ['{' or '[', ..])
        {
            yield return bare;
            yield break;
        }

        var at = 0;
        for (var scripts = 0; scripts < MostScripts && (at = page.IndexOf("<script", at, StringComparison.OrdinalIgnoreCase)) >= 0; scripts++)
        {
            var open = page.IndexOf('>', at);
            if (open < 0)
                yield break;
            var close = page.IndexOf("</script", open, StringComparison.OrdinalIgnoreCase);
            if (close < 0)
                yield break;
            if (page.AsSpan(at, open - at).Contains("ld+json", StringComparison.OrdinalIgnoreCase))
                yield return page[(open + 1)..close];
            else
                scripts--;
            at = close;
        }
    }

    // The reader of JSON has bounded the nesting.
    private static void Gather(JsonElement element, List<FoundRecipe> found)
    {
        if (found.Count >= MostRecipes)
            return;
        if (element.ValueKind == JsonValueKind.Array)
        {
            foreach (var each in element.EnumerateArray())
                Gather(each, found);
        }
        else if (element.ValueKind == JsonValueKind.Object && IsRecipe(element))
        {
            found.Add(Write(element));
        }
        else if (element.ValueKind == JsonValueKind.Object)
        {
            foreach (var member in element.EnumerateObject().Where(member => member.Name is "@graph" or "mainEntity" or "mainEntityOfPage" or "itemListElement" or "item" or "hasPart"))
                Gather(member.Value, found);
        }
    }

    private static bool IsRecipe(JsonElement element) => element.TryGetProperty("@type", out var type) && type.ValueKind switch
    {
        JsonValueKind.String => IsRecipeType(type),
        JsonValueKind.Array => type.EnumerateArray().Any(each => each.ValueKind == JsonValueKind.String && IsRecipeType(each)),
        _ => false,
    };

    private static bool IsRecipeType(JsonElement type) => TextOf(type) is "Recipe" or "schema:Recipe" or "http://schema.org/Recipe" or "https://schema.org/Recipe";

    private static FoundRecipe Write(JsonElement recipe)
    {
        var name = Texts(recipe, "name").FirstOrDefault() ?? RecipeReader.Nameless;
        var text = new StringBuilder().Append("Name: ").Append(name).Append('\n');
        var ingredients = Texts(recipe, "recipeIngredient").ToList();
        foreach (var line in ingredients.Count > 0 ? ingredients : [.. Texts(recipe, "ingredients")])
            text.Append(line).Append('\n');
        var steps = recipe.TryGetProperty("recipeInstructions", out var instructions) ? Steps(instructions).Take(MostItems).ToList() : [];
        if (steps.Count > 0)
            text.Append("Instructions\n").AppendJoin('\n', steps).Append('\n');
        foreach (var source in Sources(recipe))
            text.Append("Source: ").Append(source).Append('\n');
        return new(name, text.ToString());
    }

    private static IEnumerable<string> Steps(JsonElement instructions) => instructions.ValueKind switch
    {
        JsonValueKind.String => Lines(instructions.GetString()!),
        JsonValueKind.Array => instructions.EnumerateArray().SelectMany(Steps),
        JsonValueKind.Object when instructions.TryGetProperty("itemListElement", out var parts) => Steps(parts),
        JsonValueKind.Object => Texts(instructions, "text").DefaultIfEmpty(Texts(instructions, "name").FirstOrDefault() ?? "").Where(step => step.Length > 0),
        _ => [],
    };

    private static IEnumerable<string> Sources(JsonElement recipe)
    {
        var author = recipe.TryGetProperty("author", out var by) ? by.ValueKind switch
        {
            JsonValueKind.String => TextOf(by),
            JsonValueKind.Object => Texts(by, "name").FirstOrDefault(),
            JsonValueKind.Array => string.Join(", ", by.EnumerateArray().Select(each => each.ValueKind == JsonValueKind.Object ? Texts(each, "name").FirstOrDefault() : TextOf(each)).OfType<string>().Take(5)),
            _ => null,
        }
        : null;
        var address = Texts(recipe, "url").FirstOrDefault(url => Uri.TryCreate(url, UriKind.Absolute, out var uri) && uri.Scheme is "http" or "https");
        var joined = string.Join(", ", new[] { author, address }.Where(part => !string.IsNullOrEmpty(part)));
        if (joined.Length > 0)
            yield return joined;
    }

    private static IEnumerable<string> Texts(JsonElement parent, string member)
    {
        if (!parent.TryGetProperty(member, out var value))
            return [];
        return (value.ValueKind == JsonValueKind.Array ? value.EnumerateArray().Take(MostItems) : [value])
            .Select(TextOf).OfType<string>().SelectMany(Lines);
    }

    private static string? TextOf(JsonElement value) => value.ValueKind == JsonValueKind.String ? value.GetString() : null;

    private static IEnumerable<string> Lines(string text) => WithoutTags(text).Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Take(MostItems);

    // Pages write "<p>Shake.</p>" into their data; a tag ends a line.
    private static string WithoutTags(string text)
    {
        var plain = new StringBuilder(text.Length);
        var decoded = WebUtility.HtmlDecode(text);
        var last = decoded.LastIndexOf('>');
        for (var i = 0; i < decoded.Length; i++)
        {
            var isTag = decoded[i] == '<' && i < last && (char.IsAsciiLetter(decoded[i + 1]) || decoded[i + 1] == '/');
            var end = isTag ? decoded.IndexOf('>', i) : -1;
            if (end > 0)
            {
                plain.Append('\n');
                i = end;
            }
            else
            {
                plain.Append(char.IsControl(decoded[i]) && decoded[i] != '\n' ? ' ' : decoded[i]);
            }
        }

        return plain.ToString();
    }
}
