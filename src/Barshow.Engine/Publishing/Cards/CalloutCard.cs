using Barshow.Engine.Episodes;
using Barshow.Engine.Publishing.Escaping;
using Barshow.Engine.Publishing.Packaging;
using Barshow.Engine.Publishing.Rendering;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Publishing.Cards;

/// <summary>A card to lay over the film while a line is poured: the amount in both units, the ingredient below, the drink small above; everything else transparent.</summary>
public sealed record CalloutCard
{
    /// <summary>The frame the cards are drawn in; larger sizes are the same drawing scaled.</summary>
    public const int FrameWidth = 1920;

    private const int FrameHeight = 1080;
    private const float Margin = 96;
    private const float Padding = 36;
    private const float WidestPanel = 1400;
    private const float Cut = 22;

    /// <summary>The name of its files, without an ending: "01-harbour-sour-2-lime-juice".</summary>
    public required string FileName { get; init; }

    /// <summary>The drink's name.</summary>
    public required string Drink { get; init; }

    /// <summary>Which line of the drink, counted from 1.</summary>
    public required int Line { get; init; }

    /// <summary>The amount in both units; empty for a line without one.</summary>
    public required string Amount { get; init; }

    /// <summary>The ingredient.</summary>
    public required string Ingredient { get; init; }

    /// <summary>A card for every line of a lineup that has an amount, in viewer order.</summary>
    public static IReadOnlyList<CalloutCard> Of(Episode episode, House house)
    {
        ArgumentNullException.ThrowIfNull(episode);
        var printer = new LinePrinter(episode.Convention, house);
        return [.. episode.Lineup.SelectMany((drink, d) => drink.Spec.Lines.Select((line, i) => (line, i)).Where(item => item.line.ToPublish is not null).Select(item => new CalloutCard
        {
            FileName = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{d + 1:00}-{Names.Slug.Of(drink.Name)}-{item.i + 1}-{Names.Slug.Of(item.line.Name)}"),
            Drink = PlainText.Line(drink.Name),
            Line = item.i + 1,
            Amount = Amounts(printer, item.line),
            Ingredient = PlainText.Line(item.line.Name),
        }))];
    }

    /// <summary>The endings of a card's files: the drawing itself and its two sizes in pixels.</summary>
    public static IReadOnlyList<string> Sizes { get; } = [".svg", "-1920x1080.png", "-3840x2160.png"];

    /// <summary>The card's files, each drawn when it is asked for.</summary>
    public IEnumerable<PackageFile> Files()
    {
        yield return PackageFile.OfText(FileName + Sizes[0], ToSvg());
        yield return new(FileName + Sizes[1], ToPng(FrameWidth));
        yield return new(FileName + Sizes[2], ToPng(2 * FrameWidth));
    }

    /// <summary>What the card says, in one line.</summary>
    public override string ToString() => $"{Drink}: {Amount} {Ingredient}";

    /// <summary>The card as SVG, its text as outlines.</summary>
    public string ToSvg()
    {
        using var art = Draw();
        return art.ToSvg(ToString());
    }

    /// <summary>The card as PNG with transparency.</summary>
    /// <param name="width">The width in pixels: 1920 or 3840.</param>
    public byte[] ToPng(int width)
    {
        using var art = Draw();
        return art.ToPng(width);
    }

    private static string Amounts(LinePrinter printer, SpecLine line) => PlainText.Line(printer.Amount(line));

    // A sheet with a cut corner, well inside the edge that screens may hide; a brass line between amount and ingredient.
    private Artwork Draw()
    {
        var art = new Artwork(FrameWidth, FrameHeight);
        var room = WidestPanel - 2 * Padding;
        using var drink = SetText.Within(Drink, Typefaces.Regular, 30, 22, room);
        using var amount = SetText.Within(Casing.AtStart(Amount), Typefaces.Bold, 84, 40, room);
        using var ingredient = SetText.Within(Ingredient, Typefaces.SemiBold, 46, 28, room);
        var inside = Math.Max(320, Math.Max(drink.Width, Math.Max(amount.Width, ingredient.Width)));
        var (width, height) = (inside + 2 * Padding, 244f);
        var (left, top) = (Margin, FrameHeight - Margin - height);
        art.Fill(Outline.Polygon((left, top), (left + width - Cut, top), (left + width, top + Cut), (left + width, top + height), (left, top + height)), Palette.Sheet);
        art.Write(drink, left + Padding, top + 54, Palette.SecondInk);
        art.Write(amount, left + Padding, top + 138, Palette.Green);
        art.Fill(Outline.Box(left + Padding, top + 160, inside, 4), Palette.BrassLine);
        art.Write(ingredient, left + Padding, top + 214, Palette.Ink);
        return art;
    }
}
