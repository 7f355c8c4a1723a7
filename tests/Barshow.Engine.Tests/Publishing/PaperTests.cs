using Barshow.Engine.Publishing.CallSheet;
using UglyToad.PdfPig;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

namespace Barshow.Engine.Tests.Publishing;

public class PaperTests
{
    [Fact]
    public void The_call_sheet_fits_one_page_and_is_read_by_another_reader()
    {
        var results = ShootDays.Results();

        using var pdf = PdfDocument.Open(PdfSheets.CallSheet(CallSheetContent.Of(results), results.Bar.House));

        Assert.Equal(1, pdf.NumberOfPages);
        Assert.Equal("Call sheet: Three drinks, one bottle of white rum", pdf.Information.Title);
        var text = ContentOrderTextExtractor.GetText(pdf.GetPage(1));
        Assert.All(new[] { "10:05", "Harbour Sour", "Never say: smooth; cheap", "contains egg", "may drive" }, words => Assert.Contains(words, text, StringComparison.Ordinal));
    }

    // ISO 216: A4 is 210 × 297 mm, 595.28 × 841.89 points; ANSI A (Letter) is 8.5 × 11 inches, 612 × 792 points.
    [Theory]
    [InlineData("US", 612, 792)]
    [InlineData("AU", 595.28, 841.89)]
    public void The_paper_follows_the_region(string region, double width, double height)
    {
        using var pdf = PdfDocument.Open(PdfSheets.CallSheet(CallSheetContent.Of(ShootDays.Results()), SaltLane.House with { AudienceRegion = region }));

        Assert.Equal(width, pdf.GetPage(1).Width, 1);
        Assert.Equal(height, pdf.GetPage(1).Height, 1);
    }

    [Fact]
    public void A_long_mise_list_repeats_its_head_on_every_page_and_loses_no_task()
    {
        var results = ShootDays.Results();
        var many = ShootDays.Mise with { Tasks = [.. Enumerable.Range(1, 120).Select(i => ShootDays.Mise.Tasks[1] with { Key = $"k{i}", Text = $"Task number {i} with ⅓ and ½." })] };

        using var pdf = PdfDocument.Open(PdfSheets.Mise(many, results));

        var pages = pdf.GetPages().Select(page => ContentOrderTextExtractor.GetText(page)).ToList();
        Assert.True(pages.Count > 2);
        Assert.All(pages, page => Assert.Contains("Amount", page, StringComparison.Ordinal));
        var all = string.Join(' ', pages);
        Assert.All(Enumerable.Range(1, 120), i => Assert.Contains($"number {i} with", all, StringComparison.Ordinal));
        Assert.Contains("1⁄3 and ½", all, StringComparison.Ordinal);
        Assert.Contains($"2 of {pages.Count}", pages[1], StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(HostileNames.All), MemberType = typeof(HostileNames))]
    public void A_hostile_title_gives_a_readable_file(string title)
    {
        using var pdf = PdfDocument.Open(PdfSheets.CallSheet(CallSheetContent.Of(ShootDays.Results(ShootDays.Episode with { Title = title })), SaltLane.House));

        Assert.Contains("Private: do not publish this sheet.", string.Join(' ', pdf.GetPages().Select(page => ContentOrderTextExtractor.GetText(page))), StringComparison.Ordinal);
    }
}
