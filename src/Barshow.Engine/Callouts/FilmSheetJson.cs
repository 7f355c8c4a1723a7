using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json;
using Barshow.Engine.Measures;
using Barshow.Engine.Measures.Reading;

namespace Barshow.Engine.Callouts;

/// <summary>Reads what a film is checked against from JSON: {"convention", "title", "bottle_ml", "description", "sponsor", "gifts", "drinks"}; all but the drinks may be absent.</summary>
public static class FilmSheetJson
{
    private const int MostDrinks = 100;
    private const int MostLines = 60;

    /// <summary>Reads the sheet.</summary>
    /// <param name="json">The text.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="problem">Why it cannot be read, a sentence.</param>
    public static bool TryRead(string json, [NotNullWhen(true)] out FilmSheet? sheet, [NotNullWhen(false)] out string? problem)
    {
        ArgumentNullException.ThrowIfNull(json);
        (sheet, problem) = (null, null);
        try
        {
            using var document = JsonDocument.Parse(json, new() { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip });
            sheet = Read(document.RootElement);
            return true;
        }
        catch (JsonException broken)
        {
            problem = $"It is no JSON: line {(broken.LineNumber + 1)?.ToString(CultureInfo.InvariantCulture)}.";
        }
        catch (FormatException broken)
        {
            problem = broken.Message;
        }

        return false;
    }

    private static FilmSheet Read(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object || !root.TryGetProperty("drinks", out var drinks) || drinks.ValueKind != JsonValueKind.Array)
            throw new FormatException("It holds no list named \"drinks\".");
        if (drinks.GetArrayLength() > MostDrinks)
            throw new FormatException("It holds more than 100 drinks.");
        var sponsor = root.TryGetProperty("sponsor", out var found) && found.ValueKind == JsonValueKind.Object ? found : default;
        return new()
        {
            Convention = ConventionOf(Text(root, "convention")),
            Title = Text(root, "title"),
            BottleMillilitres = Number(root, "bottle_ml"),
            Featured = Text(root, "bottle"),
            Description = Text(root, "description"),
            Disclosure = Text(sponsor, "disclosure"),
            DisclosureBySeconds = Number(sponsor, "latest_s"),
            MustSay = Texts(sponsor, "must_say"),
            Avoid = Texts(sponsor, "avoid"),
            Gifts = Texts(root, "gifts"),
            Drinks = [.. drinks.EnumerateArray().Select(Drink)],
        };
    }

    private static SheetDrink Drink(JsonElement drink, int at)
    {
        if (drink.ValueKind != JsonValueKind.Object || Text(drink, "name") is not { Length: > 0 } name)
            throw new FormatException($"Drink {(at + 1).ToString(CultureInfo.InvariantCulture)} has no name.");
        var lines = drink.TryGetProperty("lines", out var found) && found.ValueKind == JsonValueKind.Array ? found.EnumerateArray().Take(MostLines).ToArray() : [];
        return new(name, [.. lines.Select(line => Line(line, name))])
        {
            Aliases = Texts(drink, "aliases") ?? [],
            Garnish = Text(drink, "garnish") ?? "",
        };
    }

    private static SheetLine Line(JsonElement line, string drink)
    {
        if (line.ValueKind != JsonValueKind.Object || Text(line, "ingredient") is not { Length: > 0 } ingredient)
            throw new FormatException($"A line of {drink} has no ingredient.");
        return new(ingredient, MeasureOf(line, ingredient, drink)) { Aliases = Texts(line, "aliases") ?? [], Optional = line.TryGetProperty("optional", out var optional) && optional.ValueKind == JsonValueKind.True };
    }

    private static Measure? MeasureOf(JsonElement line, string ingredient, string drink)
    {
        if (Number(line, "ml") is { } millilitres)
            return Measure.Of(Amount(millilitres, ingredient, drink), Unit.Millilitre);
        if (Number(line, "oz") is { } ounces)
            return Measure.Of(Amount(ounces, ingredient, drink), Unit.Ounce);
        if (Number(line, "count") is { } count)
            return Measure.Of(Amount(count, ingredient, drink), UnitOf(Text(line, "unit")));
        if (Text(line, "open") is { } open)
            return Measure.TryParse(open.Trim().ToLowerInvariant().Replace(' ', '-'), out var measure) && measure.Open is not null ? measure : Measure.LeftOpen(OpenMeasure.Top);
        return null;
    }

    private static Rational Amount(double number, string ingredient, string drink) =>
        number is > 0 and < 100_000
            ? Rational.FromDecimal(Math.Round((decimal)number, 4))
            : throw new FormatException($"The amount of {ingredient} in {drink} is not above nought.");

    // A unit in any spelling the line reader knows; one it does not know counts things.
    private static Unit? UnitOf(string? unit)
    {
        if (string.IsNullOrWhiteSpace(unit))
            return null;
        if (Unit.TryNamed(unit.Trim().ToLowerInvariant(), out var known))
            return known;
        return LineReader.Read($"2 {unit} x").Measure?.Unit;
    }

    private static Convention ConventionOf(string? name) => name?.Replace("-", "", StringComparison.Ordinal).Replace("_", "", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal).ToLowerInvariant() switch
    {
        null or "" or "bar" => Convention.Bar,
        "usexact" or "us" => Convention.UsExact,
        "imperialexact" or "imperial" => Convention.ImperialExact,
        _ => throw new FormatException($"There is no convention \"{name}\"; there are bar, us-exact and imperial-exact."),
    };

    private static string? Text(JsonElement of, string name) =>
        of.ValueKind == JsonValueKind.Object && of.TryGetProperty(name, out var found) && found.ValueKind == JsonValueKind.String ? found.GetString() : null;

    private static double? Number(JsonElement of, string name) =>
        of.ValueKind == JsonValueKind.Object && of.TryGetProperty(name, out var found) && found.ValueKind == JsonValueKind.Number && found.TryGetDouble(out var number) && double.IsFinite(number) ? number : null;

    private static IReadOnlyList<string>? Texts(JsonElement of, string name) =>
        of.ValueKind == JsonValueKind.Object && of.TryGetProperty(name, out var found) && found.ValueKind == JsonValueKind.Array
            ? [.. found.EnumerateArray().Where(text => text.ValueKind == JsonValueKind.String).Select(text => text.GetString()!)]
            : null;
}
