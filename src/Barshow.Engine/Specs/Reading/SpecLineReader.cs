using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures.Reading;

namespace Barshow.Engine.Specs.Reading;

/// <summary>Turns a line as it is typed ("1 1/2 oz white rum") into a line of a spec.</summary>
public static class SpecLineReader
{
    /// <summary>Reads a line.</summary>
    /// <param name="text">The line.</param>
    /// <param name="shelf">Where its ingredient is looked up.</param>
    /// <param name="method">How the drink is made; null when it was not said.</param>
    /// <param name="before">The line it was typed over, whose lower layers and reasons stay where its amount does; null for a new one.</param>
    /// <returns>The line, and what the reader has to say; places count within the line.</returns>
    public static (SpecLine Line, IReadOnlyList<Finding> Findings) Read(string text, IngredientShelf shelf, MethodKind? method = null, SpecLine? before = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(shelf);
        var read = LineReader.Read(text);
        var ingredient = read.Name.Length == 0 ? null : shelf.Named(read.Name);
        var line = new SpecLine
        {
            Name = read.Name.Length > 0 ? read.Name : text.Trim(),
            Ingredient = ingredient?.Slug ?? default,
            Amounts = before is not null && read.Measure is not null ? [.. before.Amounts.Where(amount => amount.Layer < AmountLayer.Library)] : [],
            WrittenBeside = read.Second,
            Note = read.Note,
            Optional = read.Optional,
            Use = LineUses.Of(read.Measure, ingredient, read.Note, method),
            Text = text.Trim(),
        };
        if (read.Measure is { } measure)
        {
            var same = before?.Amounts.FirstOrDefault(amount => amount.Layer == AmountLayer.Library);
            line = line.With(AmountLayer.Library, measure, same?.Measure == measure ? same.Reason : null);
        }

        return (line, read.Findings);
    }

    /// <summary>A line as it would be typed: its text, or one made of its amount, name and note.</summary>
    public static string Write(SpecLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        if (line.Text.Length > 0)
            return line.Text;
        var amount = line.At(AmountLayer.Library) is { } measure ? Measures.Writing.MeasureWriter.Plain(measure) + " " : "";
        var note = line.Note is { Length: > 0 } said ? ", " + said : "";
        return amount + line.Name + note + (line.Optional ? ", optional" : "");
    }
}
