using Barshow.Engine.Episodes;
using Barshow.Engine.Featured;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;
using Barshow.Engine.Tests.Episodes;

namespace Barshow.Engine.Tests.Featured;

public class RemakeRuleTests
{
    private static readonly Spec Sour = new()
    {
        Slug = Slug.Of("garden sour"),
        Name = "Garden Sour",
        Method = new(MethodKind.Shaken),
        Lines = [Line("white rum", 60), Line("lime juice", 22), Line("simple syrup", 15)],
    };

    private static readonly Episode Planned = new() { Slug = Slug.Of("new one"), Title = "New one", PublishDate = new(2027, 3, 20), Lineup = [new() { Spec = Sour }] };

    [Fact]
    public void A_drink_shown_within_the_gap_is_to_be_mended()
    {
        var finding = Assert.Single(Check(new(2026, 3, 21)).Findings);

        Assert.Equal(FindingCatalogue.FeaturedTooSoon, finding.Kind);
        Assert.Equal("Garden Sour was shown on 21 March 2026, 11 months before this date. The remake rule asks for 12 months.", finding.Message);
        Assert.Equal("Show it later, choose another, or say on film what changed: same name, same amounts.", finding.Remedy);
    }

    [Fact]
    public void On_the_day_the_gap_ends_it_is_only_worth_knowing()
    {
        var finding = Assert.Single(Check(new(2026, 3, 20)).Findings);

        Assert.Equal(FindingCatalogue.FeaturedBefore, finding.Kind);
        Assert.StartsWith("Garden Sour was shown on 20 March 2026, 12 months before this date.", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_episodes_own_features_do_not_count_against_it() =>
        Assert.Empty(Check(new(2027, 3, 20), Planned.Slug).Findings);

    [Fact]
    public void What_is_shown_later_is_not_before() =>
        Assert.Empty(Check(new(2027, 3, 21)).Findings);

    [Fact]
    public void An_empty_log_says_that_the_check_was_not_made()
    {
        var check = RemakeRule.Check(Planned, SmallBar.Bar, FeaturedLog.Empty, new(2027, 3, 20));

        Assert.Equal("The featured log is empty, so no drink was compared with earlier episodes.", Assert.Single(check.Findings).Message);
    }

    private static FeaturedCheck Check(DateOnly shown, Slug episode = default) => RemakeRule.Check(
        Planned, SmallBar.Bar, new([new() { Episode = episode, EpisodeTitle = "Earlier", Date = shown, Spec = Sour }]), new(2027, 3, 20));

    private static SpecLine Line(string name, int millilitres) => new()
    {
        Name = name,
        Ingredient = Slug.Of(name),
        Amounts = [new(AmountLayer.Library, Measure.Millilitres(millilitres))],
    };
}
