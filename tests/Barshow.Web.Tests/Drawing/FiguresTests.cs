using System.Globalization;
using Barshow.Web.Drawing;

namespace Barshow.Web.Tests.Drawing;

/// <summary>Numbers on screen are written alike whatever the computer's own habit is.</summary>
public class FiguresTests
{
    [Theory]
    [InlineData(9.94, 10.8, "9.9–10.8")]
    [InlineData(10.01, 10.04, "10.0")]
    public void A_range_is_one_figure_where_both_ends_are_written_alike(double low, double high, string expected) =>
        Assert.Equal(expected, Figures.Range(low, high));

    [Theory]
    [InlineData(0, "0:00")]
    [InlineData(271, "4:31")]
    [InlineData(3725, "1:02:05")]
    public void Film_times_have_hours_only_where_there_are_any(double seconds, string expected) => Assert.Equal(expected, Figures.FilmTime(seconds));

    [Fact]
    public void A_comma_country_sees_a_point_and_a_true_minus()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");

            Assert.Equal("22.5", Figures.UpToOne(22.5));
            Assert.Equal("−3.0", Figures.One(-3));
            Assert.Equal("0.0", Figures.One(-0.01));
            Assert.Equal("1,000", Figures.Whole(1000));
            Assert.Equal("Thu 3 Dec 2026", Figures.Day(new(2026, 12, 3)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData("4:31", 271)]
    [InlineData("1:02:05", 3725)]
    [InlineData("271", 271)]
    [InlineData("0:00", 0)]
    public void Film_times_are_read_as_people_type_them(string text, double expected) => Assert.Equal(expected, Web.Pages.Episodes.Publish.FilmTime.Read(text));

    [Theory]
    [InlineData("")]
    [InlineData("4:61")]
    [InlineData("-1:00")]
    [InlineData("1:2:3:4")]
    [InlineData("four")]
    [InlineData("99999999999")]
    [InlineData("30:00:00")]
    public void What_is_no_film_time_is_refused(string text) => Assert.Null(Web.Pages.Episodes.Publish.FilmTime.Read(text));
}
