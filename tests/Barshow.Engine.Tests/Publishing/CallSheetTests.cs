using Barshow.Engine.Publishing.CallSheet;

namespace Barshow.Engine.Tests.Publishing;

public class CallSheetTests
{
    private static readonly CallSheetContent Sheet = CallSheetContent.Of(ShootDays.Results());

    [Fact]
    public void It_opens_with_the_facts_of_the_day() =>
        Assert.Equal(
            [("Shoot", "Saturday 6 March 2027"), ("Call", "10:00 (UTC)"), ("Wrap", "10:55"), ("Drinks", "3, 6 takes"), ("Bottle", "white rum, 700 ml")],
            Sheet.Facts);

    [Fact]
    public void The_takes_and_resets_of_a_drink_are_one_row() =>
        Assert.Equal(
            [
                new("10:00", "10:05", "Introduction", "", true),
                new("10:05", "10:22", "Harbour Sour", "2 takes, Bench, coupe", true),
                new("10:22", "10:32", "Break", "", true),
                new("10:32", "10:40", "Dune", "1 take, Bench, highball", true),
                new("10:40", "10:55", "Wash-up", "", false),
            ],
            Sheet.Day);

    [Fact]
    public void The_sponsors_points_are_told() =>
        Assert.Equal(
            ["a rum maker pays. Approval: waited for.", "Say within 30 s of film: \"Ad: paid for by a rum maker.\"", "Must be said: made in a pot still", "Never say: smooth; cheap"],
            Sheet.Sponsor);

    [Fact]
    public void The_preparation_is_summed_up_and_what_is_done_between_takes_is_told() =>
        Assert.Equal(
            ["The day before: 1 task, from 19:40 the day before to 19:50 the day before with 1 pair of hands; see the mise list.", "Before the call: 1 task, from 09:30 to 09:42 with 1 pair of hands; see the mise list.", "10:24 Chill the highballs."],
            Sheet.Mise);

    [Fact]
    public void Allergens_are_told_by_drink_and_never_denied() =>
        Assert.Equal(
            ["Harbour Sour: contains egg.", "Dune: contains almond (tree nuts).", "Kelp: check the label for tree nuts.", "Shared shakers and strainers carry allergens: wash between drinks. Nothing here is said to be free from any."],
            Sheet.Allergens);

    [Fact]
    public void No_number_on_it_says_that_anyone_may_drive() =>
        Assert.Contains(Sheet.Safety, line => line.EndsWith("No number here says that anyone may drive.", StringComparison.Ordinal));

    [Fact]
    public void An_episode_with_nothing_planned_still_has_a_sheet()
    {
        var page = CallSheetPage.Write(CallSheetContent.Of(SaltLane.Results(SaltLane.Evening)));

        Assert.Contains("No running order was made.", page, StringComparison.Ordinal);
        Assert.Contains("No mise list was made.", page, StringComparison.Ordinal);
        Assert.Contains("No sponsor and no gifts are noted.", page, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(HostileNames.All), MemberType = typeof(HostileNames))]
    public void A_hostile_name_opens_no_tag(string name)
    {
        var clean = CallSheetPage.Write(CallSheetContent.Of(ShootDays.Results(With("plain"))));
        var page = CallSheetPage.Write(CallSheetContent.Of(ShootDays.Results(With(name))));

        Assert.Equal(Tags(clean), Tags(page));
        Assert.DoesNotContain("<script", page, StringComparison.OrdinalIgnoreCase);

        static Engine.Episodes.Episode With(string name) => ShootDays.Episode with
        {
            Title = name,
            Sponsor = ShootDays.Episode.Sponsor with { Sponsor = name.Length > 0 ? name : "x", MustSay = [name], Avoid = [name], Disclosure = name.Length > 1 ? name : "Ad" },
            Lineup = [ShootDays.Episode.Lineup[0] with { Spec = ShootDays.Episode.Lineup[0].Spec with { Name = name } }, .. ShootDays.Episode.Lineup.Skip(1)],
        };
    }

    private static int Tags(string page) => page.Count(c => c == '<');
}
