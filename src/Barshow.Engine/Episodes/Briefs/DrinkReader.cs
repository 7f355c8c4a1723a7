using System.Globalization;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures;
using Barshow.Engine.Measures.Reading;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Reading;

namespace Barshow.Engine.Episodes.Briefs;

/// <summary>Understands one drink of a brief.</summary>
internal sealed class DrinkReader(Bar bar, Episode episode, List<Finding> findings)
{
    private const double MostMillilitres = 2000;

    public LineupDrink Read(DrinkParts parts)
    {
        var name = parts.Name.Text.Trim().TrimEnd(':').Trim();
        if (name.Length == 0)
            name = string.Create(CultureInfo.InvariantCulture, $"Drink on line {parts.Name.Line}");
        TakeFinish(parts);
        if (parts.Lines.Count == 0)
            findings.Add(BriefFindings.WithoutLines(name, parts.Name.Line));

        var spec = new Spec { Slug = Slug.Of(name), Name = name };
        if (parts.Finish is { } finish)
            spec = WithFinish(spec, finish);
        else if (parts.Lines.Count > 0)
            findings.Add(BriefFindings.WithoutFinish(name, parts.Lines[^1].Line.Line));
        spec = spec with { Lines = [.. parts.Lines.Select(line => Line(line, spec))] };

        var drink = new LineupDrink { Spec = spec, BriefLine = parts.Name.Line };
        foreach (var key in parts.Keys)
            drink = Apply(drink, key);
        return drink;
    }

    // The closing line is the last one that names a method; an ingredient line never does.
    private static void TakeFinish(DrinkParts parts)
    {
        if (parts.Finish is not null || parts.Lines.Count == 0)
            return;
        var last = parts.Lines[^1];
        if (!FinishReader.LooksLikeFinish(last.Line.Text) || last.Was is not null)
            return;
        parts.Finish = last.Line;
        parts.Lines.RemoveAt(parts.Lines.Count - 1);
    }

    private Spec WithFinish(Spec spec, BriefText text)
    {
        var finish = FinishReader.Read(text.Text, bar.Kit, bar.Ingredients);
        findings.AddRange(finish.Findings.Select(finding => Placed(finding, spec, text.Line)));
        return spec with { Method = finish.Method, Serve = finish.Serve, Garnish = finish.Garnish };
    }

    private SpecLine Line(IngredientParts parts, Spec spec)
    {
        var read = LineReader.Read(parts.Line.Text);
        findings.AddRange(read.Findings.Select(finding => Placed(finding, spec, parts.Line.Line)));
        var measure = Pourable(read.Measure, read.Name, spec, parts.Line);
        var ingredient = read.Name.Length == 0 ? null : bar.Ingredients.Named(read.Name);
        if (ingredient is null && read.Name.Length > 0)
            findings.Add(BriefFindings.Unknown(read.Name, spec.Name, parts.Line.Line));

        var line = new SpecLine
        {
            Name = read.Name.Length > 0 ? read.Name : parts.Line.Text,
            Ingredient = ingredient?.Slug ?? default,
            WrittenBeside = read.Second,
            Note = read.Note,
            Optional = read.Optional,
            Use = LineUses.Of(measure, ingredient, read.Note, spec.Method?.Kind),
            Text = parts.Line.Text,
            BriefLine = parts.Line.Line,
        };
        if (measure is not null)
            line = line.With(AmountLayer.Library, measure, null);
        if (parts.Was is { } was && LineReader.Read(was.Text).Measure is { } source)
            line = line.With(AmountLayer.Source, source, null);
        return line;
    }

    private Measure? Pourable(Measure? measure, string name, Spec spec, BriefText line)
    {
        if (measure?.InMillilitres(episode.Convention, bar.House.BarSizes)?.ToDouble() is not (<= 0 or > MostMillilitres) && measure?.High?.Sign != 0)
            return measure;
        findings.Add(new Finding(FindingCatalogue.AmountImpossible, name,
            $"\"{line.Text}\" cannot be poured into one drink; the amount was left out.",
            "Write the amount for one drink, above nought and at most 2 l.")
        { Line = line.Line, Drink = spec.Name, Ingredient = name, Said = line.Text });
        return null;
    }

    private LineupDrink Apply(LineupDrink drink, BriefKey key)
    {
        var spec = drink.Spec;
        switch (key.Key)
        {
            case BriefKeys.Note:
                return drink with { Spec = spec with { Notes = [.. spec.Notes, key.Value] } };
            case BriefKeys.AlsoCalled:
                return drink with { Spec = spec with { Aliases = [.. spec.Aliases, .. key.Value.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)] } };
            case BriefKeys.At:
                return drink with { FilmSeconds = HeaderReader.FilmTime(key, findings, drink.Name) };
            case BriefKeys.Takes when int.TryParse(key.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var takes) && takes is >= 1 and <= 20:
                return drink with { Takes = takes };
            case BriefKeys.Takes:
                findings.Add(BriefFindings.Unreadable(key, "Takes: a whole number from 1 to 20", drink.Name));
                return drink;
            default:
                findings.Add(BriefFindings.KeyUnknown(key));
                return drink;
        }
    }

    private static Finding Placed(Finding finding, Spec spec, int line) => finding with { Line = line, Drink = spec.Name };
}
