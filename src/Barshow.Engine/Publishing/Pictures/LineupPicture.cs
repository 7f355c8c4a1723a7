using System.Globalization;
using Barshow.Engine.Episodes;
using Barshow.Engine.Publishing.Escaping;
using Barshow.Engine.Publishing.Rendering;

namespace Barshow.Engine.Publishing.Pictures;

/// <summary>Pictures of the drinks: all of them on one shelf to one scale, or one alone.</summary>
public static class LineupPicture
{
    private const int Width = 1920;
    private const int Height = 1080;
    private const int MostInARow = 6;

    /// <summary>Every drink of a lineup in its glass, in viewer order, as PNG of 1920 × 1080.</summary>
    public static byte[] Png(EpisodeResults results)
    {
        ArgumentNullException.ThrowIfNull(results);
        using var art = Shelf(results);
        return art.ToPng(Width);
    }

    /// <summary>The same as SVG.</summary>
    public static string Svg(EpisodeResults results)
    {
        ArgumentNullException.ThrowIfNull(results);
        using var art = Shelf(results);
        return art.ToSvg($"The drinks of {results.Episode.Title}: {string.Join(", ", results.Episode.Lineup.Select(drink => drink.Name))}");
    }

    /// <summary>One drink in its glass, as PNG of 1200 × 1200 on paper.</summary>
    public static byte[] Png(EpisodeResults results, LineupDrink drink)
    {
        ArgumentNullException.ThrowIfNull(results);
        ArgumentNullException.ThrowIfNull(drink);
        const int side = 1200;
        using var art = new Artwork(side, side);
        art.Fill(Outline.Box(0, 0, side, side), Palette.Sheet);
        var scale = Math.Min(880 / DrinkPicture.Standing(results, drink), 900 / DrinkPicture.Widest(results, drink));
        DrinkPicture.Draw(art, results, drink, side / 2f, 1050, scale);
        return art.ToPng(side);
    }

    private static Artwork Shelf(EpisodeResults results)
    {
        var art = new Artwork(Width, Height);
        art.Fill(Outline.Box(0, 0, Width, Height), Palette.Sheet);
        using (var title = SetText.Within(PlainText.Line(results.Episode.Title), Typefaces.Bold, 56, 30, Width - 192))
            art.Write(title, 96, 122, Palette.Green);
        var drinks = results.Episode.Lineup;
        if (drinks.Count == 0)
            return art;
        var rows = (drinks.Count + MostInARow - 1) / MostInARow;
        var inARow = (drinks.Count + rows - 1) / rows;
        var (cellWidth, cellHeight) = ((Width - 192f) / inARow, (Height - 190f) / rows);
        var scale = Math.Min(
            (cellHeight - 110) / drinks.Max(drink => DrinkPicture.Standing(results, drink)),
            (cellWidth - 60) / drinks.Max(drink => DrinkPicture.Widest(results, drink)));
        for (var i = 0; i < drinks.Count; i++)
        {
            var (row, column) = (i / inARow, i % inARow);
            var table = 160 + (row + 1) * cellHeight - 80;
            var inThisRow = Math.Min(inARow, drinks.Count - row * inARow);
            var middle = 96 + (column + 0.5f + (inARow - inThisRow) / 2f) * cellWidth;
            DrinkPicture.Draw(art, results, drinks[i], middle, table, scale);
            using var name = SetText.Within(string.Create(CultureInfo.InvariantCulture, $"{i + 1}  {PlainText.Line(drinks[i].Name)}"), Typefaces.SemiBold, 30, 18, cellWidth - 24);
            art.Write(name, middle - name.Width / 2, table + 46, Palette.Ink);
        }

        return art;
    }
}
