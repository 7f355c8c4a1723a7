using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Reading;

namespace Barshow.Engine.Tests.Specs;

/// <summary>A line of a spec is typed as one would say it.</summary>
public class SpecLineReaderTests
{
    private static readonly IngredientShelf Shelf = new(
    [
        new() { Slug = Slug.Parse("white-rum"), Name = "White rum", Kind = IngredientKind.Spirit },
        new() { Slug = Slug.Parse("soda-water"), Name = "Soda water", Kind = IngredientKind.Mixer, Fizzy = true },
    ]);

    [Fact]
    public void A_typed_line_becomes_amount_ingredient_and_note()
    {
        var (line, findings) = SpecLineReader.Read("1 1/2 oz white rum, chilled", Shelf);

        Assert.Equal((Measure.Ounces(3, 2), Slug.Parse("white-rum"), "chilled"), (line.Planned, line.Ingredient, line.Note));
        Assert.Empty(findings);
    }

    [Fact]
    public void What_holds_gas_is_poured_on_top() =>
        Assert.Equal(LineUse.Topped, SpecLineReader.Read("top with 75 ml soda water", Shelf).Line.Use);

    [Fact]
    public void The_source_of_an_amount_stays_when_it_is_typed_anew_and_the_reason_only_where_the_amount_does()
    {
        var before = new SpecLine { Name = "white rum" }.With(AmountLayer.Source, Measure.Millilitres(60), null).With(AmountLayer.Library, Measure.Ounces(2), "rounder");

        var same = SpecLineReader.Read("2 oz white rum", Shelf, before: before).Line;
        var other = SpecLineReader.Read("1 1/2 oz white rum", Shelf, before: before).Line;

        Assert.Equal(Measure.Millilitres(60), same.At(AmountLayer.Source));
        Assert.Equal("rounder", same.Amounts[^1].Reason);
        Assert.Equal((Measure.Millilitres(60), null), (other.At(AmountLayer.Source), other.Amounts[^1].Reason));
    }

    [Theory]
    [InlineData("1 1/2 oz white rum")]
    [InlineData("top with 75 ml soda water")]
    [InlineData("8 mint leaves, clapped")]
    public void A_line_is_written_as_it_was_typed(string text) =>
        Assert.Equal(text, SpecLineReader.Write(SpecLineReader.Read(text, Shelf).Line));

    [Fact]
    public void A_line_that_was_never_typed_is_written_so_that_it_reads_back()
    {
        var line = new SpecLine { Name = "white rum", Note = "chilled" }.With(AmountLayer.Library, Measure.Ounces(3, 2), null);

        var read = SpecLineReader.Read(SpecLineReader.Write(line), Shelf).Line;

        Assert.Equal((Measure.Ounces(3, 2), "white rum", "chilled"), (read.Planned, read.Name, read.Note));
    }
}
