using System.Globalization;
using Xunit.Abstractions;

namespace Barshow.Engine.Tests.Callouts;

public class CheckedFilmTests(ITestOutputHelper output)
{
    public static TheoryData<string> Names => [.. CalloutFilm.All];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_film_is_heard_as_a_person_hears_it(string name)
    {
        var film = CalloutFilm.Load(name);

        Assert.Equal(film.Callouts.Concat(film.Findings), film.Heard.Concat(film.Found));
    }

    [Fact]
    public void Nearly_all_amounts_and_mistakes_are_found_and_hardly_any_alarm_is_false()
    {
        int said = 0, found = 0, reported = 0, planted = 0, caught = 0, alarms = 0, films = 0;
        foreach (var name in CalloutFilm.All)
        {
            var film = CalloutFilm.Load(name);
            films++;
            said += film.Callouts.Count;
            reported += film.Heard.Count;
            found += Met(film.Callouts, film.Heard);
            planted += film.Findings.Count;
            caught += Met(film.Findings, film.Found);
            alarms += film.Found.Count - Met(film.Findings, film.Found);
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{films} films: {found} of {said} callouts found ({100d * found / said:0.0} %), {found} of {reported} reported ones true ({100d * found / reported:0.0} %), {caught} of {planted} planted errors found, {alarms} false alarms."));
        Assert.True(found >= 0.98 * said && found >= 0.98 * reported && caught >= 0.95 * planted && alarms <= films);
    }

    private static int Met(IEnumerable<string> wanted, IEnumerable<string> given)
    {
        var left = given.ToList();
        return wanted.Count(left.Remove);
    }
}
