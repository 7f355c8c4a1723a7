using System.Text;
using Barshow.Engine.Publishing.CallSheet;
using Ical.Net;

namespace Barshow.Engine.Tests.Publishing;

public class CalendarTests
{
    private static readonly DateTimeOffset MadeAt = new(2027, 2, 1, 9, 30, 0, TimeSpan.Zero);

    [Fact]
    public void Preparation_and_shoot_are_written_in_utc_with_the_local_hours_in_the_text()
    {
        var calendar = Calendar.Load(Write(ShootDays.Episode with { TimeZone = "Australia/Hobart" })!)!;

        // Hobart keeps summer time on 6 March: UTC+11 (IANA time zone database), so 10:00 there is 23:00 UTC of the day before.
        Assert.Equal([new(2027, 3, 5, 22, 30, 0), new(2027, 3, 5, 23, 0, 0)], calendar.Events.Select(item => item.Start!.AsUtc));
        Assert.Equal([new(2027, 3, 5, 23, 0, 0), new(2027, 3, 5, 23, 55, 0)], calendar.Events.Select(item => item.End!.AsUtc));
        Assert.StartsWith("Hours are local (Australia/Hobart).\n10:00 Introduction\n10:05 Harbour Sour\n", calendar.Events[1]!.Description, StringComparison.Ordinal);
        Assert.Equal(["three-from-one-bottle-prep@barshow.invalid", "three-from-one-bottle-shoot@barshow.invalid"], calendar.Events.Select(item => item.Uid));
    }

    [Fact]
    public void The_same_day_gives_the_same_file() =>
        Assert.Equal(Write(ShootDays.Episode), Write(ShootDays.Episode));

    [Fact]
    public void Without_a_day_there_is_no_calendar()
    {
        var results = ShootDays.Results() with { Order = ShootDays.Order with { Clock = new(null, new TimeOnly(10, 0)) } };

        Assert.Null(CallSheetCalendar.Write(results, CallSheetContent.Of(results), MadeAt));
    }

    // RFC 5545, section 3.1: lines end in CRLF and hold at most 75 octets; section 3.3.11: commas, semicolons, backslashes and line breaks in text are escaped.
    [Theory]
    [MemberData(nameof(HostileNames.All), MemberType = typeof(HostileNames))]
    public void Hostile_titles_are_escaped_and_folded_and_come_back_as_they_were(string title)
    {
        var text = Write(ShootDays.Episode with { Title = title })!;

        Assert.All(text.Split("\r\n"), line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 0, 75));
        Assert.DoesNotContain(text.Replace("\r\n", "", StringComparison.Ordinal), c => c is '\r' or '\n');
        Assert.Equal(2, text.Split("BEGIN:VEVENT").Length - 1 - (title.Contains("BEGIN:VEVENT", StringComparison.Ordinal) ? 2 : 0));
        Assert.Equal(Engine.Publishing.Escaping.PlainText.Line($"Shoot: {title}"), Calendar.Load(text)!.Events[1]!.Summary);
    }

    [Fact]
    public void Forty_accented_letters_are_folded_between_letters()
    {
        // 40 × é are 80 octets and must be folded; neither piece may end in half a letter.
        var text = Write(ShootDays.Episode with { Title = new string('é', 40) })!;

        Assert.DoesNotContain('\uFFFD', text);
        Assert.Equal("Shoot: " + new string('é', 40), Calendar.Load(text)!.Events[1]!.Summary);
    }

    private static string? Write(Engine.Episodes.Episode episode)
    {
        var results = ShootDays.Results(episode);
        return CallSheetCalendar.Write(results, CallSheetContent.Of(results), MadeAt);
    }
}
