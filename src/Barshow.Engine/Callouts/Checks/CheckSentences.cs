using System.Globalization;
using Barshow.Engine.Callouts.Segments;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures;
using Barshow.Engine.Measures.Writing;

namespace Barshow.Engine.Callouts.Checks;

/// <summary>What the callout check has to say.</summary>
internal static class CheckSentences
{
    public static Finding PairDisagrees(TaughtFilm film, int k)
    {
        var tie = film.Ties[k].Select(tie => (Tie?)tie).FirstOrDefault();
        var drink = tie?.Drink ?? film.StretchOf(k)?.Drinks.Select(found => (int?)found).FirstOrDefault();
        var ingredient = tie is { } known ? film.Sheet.Drinks[known.Drink].Lines[known.Line].Ingredient : film.Fit.NameAt(k);
        var said = CalloutCheck.Findings(film.CalloutOf(film.Amounts[k])!, ingredient ?? film.Quote(k))[0];
        var wanted = tie is { } line ? film.Sheet.Drinks[line.Drink].Lines[line.Line].Measure : null;
        var expected = wanted is { HasAmount: true } ? Both(wanted, film.Sheet.Convention) : said.Expected;
        return new(FindingCatalogue.PairDisagrees, ingredient ?? film.Quote(k), said.Message, wanted is { HasAmount: true } ? PickUp(wanted, film.Sheet.Convention, ingredient!) : said.Remedy)
        {
            TimeSeconds = film.TimeOf(k),
            Drink = drink is { } named ? film.Sheet.Drinks[named].Name : null,
            Ingredient = ingredient,
            Said = film.Quote(k),
            Expected = expected,
        };
    }

    public static Finding Differs(TaughtFilm film, int k, Tie tie)
    {
        var line = film.Sheet.Drinks[tie.Drink].Lines[tie.Line];
        return new(FindingCatalogue.DiffersFromSpec, line.Ingredient,
            $"\"{film.Quote(k)}\" is said of {line.Ingredient} in the {film.Sheet.Drinks[tie.Drink].Name}; the spec has {Both(line.Measure!, film.Sheet.Convention)}.",
            PickUp(line.Measure!, film.Sheet.Convention, line.Ingredient) + " Or change the spec, if the film is right.")
        {
            TimeSeconds = film.TimeOf(k),
            Drink = film.Sheet.Drinks[tie.Drink].Name,
            Ingredient = line.Ingredient,
            Said = film.Quote(k),
            Expected = Both(line.Measure!, film.Sheet.Convention),
        };
    }

    public static Finding NotInSpec(TaughtFilm film, int k, int drink)
    {
        var named = film.Fit.NameAt(k)!;
        var of = film.Quote(k).Contains(named, StringComparison.OrdinalIgnoreCase) ? "" : $" of {named}";
        return new(FindingCatalogue.NotInSpec, named,
            $"\"{film.Quote(k)}\"{of} is said in the {film.Sheet.Drinks[drink].Name}, whose spec has no {named}.",
            $"Add {named} to the spec, or say again what is poured.")
        {
            TimeSeconds = film.TimeOf(k),
            Drink = film.Sheet.Drinks[drink].Name,
            Ingredient = named,
            Said = film.Quote(k),
        };
    }

    public static Finding DrinkNotSaid(TaughtFilm film, int drink)
    {
        var name = film.Sheet.Drinks[drink].Name;
        return new(FindingCatalogue.NotSaid, name, $"The {name} is not taught anywhere in the captions, so none of its amounts is said.", "Check that the captions are of the whole film, or take the drink out of the lineup.") { Drink = name };
    }

    public static Finding NotSaid(TaughtFilm film, int drink, int line, IReadOnlyList<Stretch> stretches)
    {
        var wanted = film.Sheet.Drinks[drink].Lines[line];
        var name = film.Sheet.Drinks[drink].Name;
        return new(FindingCatalogue.NotSaid, wanted.Ingredient, $"The amount of {wanted.Ingredient} in the {name} is never said; the spec has {Both(wanted.Measure!, film.Sheet.Convention)}.", PickUp(wanted.Measure!, film.Sheet.Convention, wanted.Ingredient))
        {
            TimeSeconds = film.Speech.TimeOf(MentionOf(film, drink, line, stretches) ?? stretches[0].From),
            Drink = name,
            Ingredient = wanted.Ingredient,
            Expected = Both(wanted.Measure!, film.Sheet.Convention),
        };
    }

    public static Finding OneUnitOnly(TaughtFilm film, int drink, int line, int k)
    {
        var wanted = film.Sheet.Drinks[drink].Lines[line];
        var isMetric = film.Amounts[k].Ounces is null;
        var other = film.CalloutOf(film.Amounts[k])!;
        var missing = isMetric ? other.Ounces! : other.Millilitres!;
        return new(FindingCatalogue.OneUnitOnly, wanted.Ingredient,
            $"{Capital(wanted.Ingredient)} in the {film.Sheet.Drinks[drink].Name} is said in {(isMetric ? "millilitres" : "ounces")} only.",
            other is { OuncesPourable: true, MillilitresPourable: true }
                ? $"Say {MeasureWriter.Say(missing.WithoutOpen())} too, or add a lower third with {other.Show()}."
                : $"Add a lower third with {other.Show()}, or pour an amount that can be said in both units.")
        {
            TimeSeconds = film.TimeOf(k),
            Drink = film.Sheet.Drinks[drink].Name,
            Ingredient = wanted.Ingredient,
            Said = film.Quote(k),
            Expected = other.Show(),
        };
    }

    /// <summary>Both units of a measure, for people.</summary>
    public static string Both(Measure measure, Convention convention) => Callout.Of(measure, convention) is { HasBothUnits: true } both ? both.Show() : MeasureWriter.Show(measure);

    /// <summary>A time of film as people write it: "4:31", "1:02:07".</summary>
    public static string Time(double seconds)
    {
        var whole = (long)Math.Clamp(seconds, 0, 1e9);
        return whole >= 3600
            ? string.Create(CultureInfo.InvariantCulture, $"{whole / 3600}:{whole / 60 % 60:00}:{whole % 60:00}")
            : string.Create(CultureInfo.InvariantCulture, $"{whole / 60}:{whole % 60:00}");
    }

    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    private static string PickUp(Measure measure, Convention convention, string ingredient)
    {
        var callout = Callout.Of(measure, convention);
        return $"Record \"{callout.Say()} of {ingredient}\", or add a lower third with {Both(measure, convention)}.";
    }

    private static int? MentionOf(TaughtFilm film, int drink, int line, IReadOnlyList<Stretch> stretches)
    {
        foreach (var stretch in stretches)
        {
            foreach (var (token, _) in film.Words.Heard(stretch.From, stretch.To))
            {
                if (film.Words.Match(drink, line, film.Words.Heard(token, Math.Min(stretch.To, token + 3)), isPhrase: false) >= 0.6)
                    return token;
            }
        }

        return null;
    }
}
