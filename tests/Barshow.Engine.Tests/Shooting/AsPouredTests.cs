using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Shooting.AsPoured;
using Barshow.Engine.Specs;
using CsCheck;

namespace Barshow.Engine.Tests.Shooting;

public class AsPouredTests
{
    private static readonly DateTimeOffset Ten = new(2027, 3, 6, 10, 0, 0, TimeSpan.Zero);
    private static readonly Slug Sour = Slug.Of("Salt Lane Sour");
    private static readonly Episode Night = Kit.Episode(Kit.Drink("Salt Lane Sour"));

    private static PouredEntry Entry(string device, long sequence, PouredKind kind = PouredKind.Poured, int? line = 1, Measure? measure = null, int take = 1, string name = "", TakeVerdict? verdict = null, int minute = 0, string remark = "") => new()
    {
        Device = device,
        Sequence = sequence,
        At = Ten.AddMinutes(minute),
        Kind = kind,
        Drink = Sour,
        Take = take,
        Line = line,
        Measure = measure,
        Name = name,
        Ingredient = name.Length > 0 ? Slug.Of(name) : default,
        Verdict = verdict,
        Remark = remark,
    };

    private static PouredEntry Good(string device, long sequence, int take = 1) => Entry(device, sequence, PouredKind.Judged, null, take: take, verdict: TakeVerdict.Good, minute: 30);

    [Fact]
    public void An_amount_bumped_up_on_camera_is_a_difference()
    {
        var compared = PouredComparison.Of(Night, PouredLog.Of([Entry("tablet", 1, measure: Measure.Millilitres(75, 2), remark: "limes were mild"), Good("tablet", 2)]));

        var finding = Assert.Single(compared.Findings);
        Assert.Equal("Salt Lane Sour: 37.5 ml of Lime juice was poured (limes were mild); the spec says 30 ml.", finding.Message);
        Assert.Equal("Make it the episode's, make it the library's, or mark a pick-up.", finding.Remedy);
    }

    [Fact]
    public void The_same_amount_in_the_other_unit_is_no_difference()
    {
        var compared = PouredComparison.Of(Night, PouredLog.Of([Entry("tablet", 1, measure: Measure.Ounces(1)), Good("tablet", 2)]));

        Assert.Empty(compared.Findings);
    }

    [Fact]
    public void An_accepted_amount_wins_in_what_is_published()
    {
        var difference = Assert.Single(PouredComparison.Of(Night, PouredLog.Of([Entry("tablet", 1, measure: Measure.Millilitres(75, 2)), Good("tablet", 2)])).Differences);

        var spec = difference.Accept(Night.Lineup[0].Spec, AmountLayer.Poured);

        Assert.Equal(Measure.Millilitres(75, 2), spec.Lines[1].ToPublish);
        Assert.Equal(Measure.Millilitres(30), spec.Lines[1].Planned);
        Assert.Equal(Measure.Millilitres(75, 2), difference.Accept(Night.Lineup[0].Spec, AmountLayer.Library).Lines[1].At(AmountLayer.Library));
    }

    [Fact]
    public void What_was_accepted_is_settled()
    {
        var log = PouredLog.Of([Entry("tablet", 1, measure: Measure.Millilitres(75, 2)), Entry("tablet", 2, PouredKind.Swapped, 2, name: "Honey syrup"), Entry("tablet", 3, PouredKind.Added, null, Measure.Of(2, Unit.Dash), name: "Aromatic bitters"), Good("tablet", 4)]);
        var spec = PouredComparison.Of(Night, log).Differences.Aggregate(Night.Lineup[0].Spec, (spec, difference) => difference.Accept(spec, AmountLayer.Poured));

        Assert.Empty(PouredComparison.Of(Night with { Lineup = [Night.Lineup[0] with { Spec = spec }] }, log).Differences);
    }

    [Fact]
    public void A_swap_and_an_added_line_are_told_apart()
    {
        var compared = PouredComparison.Of(Night, PouredLog.Of(
        [
            Entry("tablet", 1, PouredKind.Swapped, 2, name: "Honey syrup"), Entry("tablet", 2, PouredKind.Added, null, Measure.Of(2, Unit.Dash), name: "Aromatic bitters"), Good("tablet", 3),
        ]));

        Assert.Equal(
            ["Salt Lane Sour: Honey syrup was poured in place of Simple syrup.", "Salt Lane Sour: 2 dashes of Aromatic bitters was added; the spec does not hold it."],
            compared.Findings.Select(finding => finding.Message));
        Assert.Equal(4, compared.Differences[1].Accept(Night.Lineup[0].Spec, AmountLayer.Poured).Lines.Count);
        Assert.Equal("Honey syrup", compared.Differences[0].Accept(Night.Lineup[0].Spec, AmountLayer.Poured).Lines[2].Name);
    }

    [Fact]
    public void Only_the_good_take_is_compared()
    {
        var log = PouredLog.Of([Entry("tablet", 1, measure: Measure.Millilitres(60)), Entry("tablet", 2, take: 2, measure: Measure.Millilitres(30)), Good("tablet", 3, take: 2)]);

        Assert.Empty(PouredComparison.Of(Night, log).Findings);
    }

    [Fact]
    public void Without_a_good_take_the_last_is_compared_and_that_is_said()
    {
        var compared = PouredComparison.Of(Night, PouredLog.Of([Entry("tablet", 1, measure: Measure.Millilitres(30))]));

        Assert.Equal("No take of Salt Lane Sour is logged as good, so take 1 was compared.", Assert.Single(compared.Findings).Message);
    }

    [Fact]
    public void A_later_entry_of_one_device_corrects_the_earlier()
    {
        var log = PouredLog.Of([Entry("tablet", 1, measure: Measure.Millilitres(60)), Entry("tablet", 2, measure: Measure.Millilitres(30), minute: 1), Good("tablet", 3)]);

        Assert.Empty(PouredComparison.Of(Night, log).Findings);
    }

    [Fact]
    public void Two_amounts_of_two_devices_for_one_take_are_a_finding()
    {
        var log = PouredLog.Of([Entry("phone", 1, measure: Measure.Millilitres(30), minute: 1), Entry("tablet", 1, measure: Measure.Millilitres(45)), Good("tablet", 2)]);

        var finding = Assert.Single(PouredComparison.Of(Night, log).Findings);

        Assert.Equal(FindingCatalogue.PouredTwice, finding.Kind);
        Assert.Equal("Salt Lane Sour: tablet logged 45 ml and phone logged 30 ml of Lime juice for one take; the later is used.", finding.Message);
    }

    [Fact]
    public void Logs_of_two_devices_merge_exactly_once_however_often_and_in_whatever_order_they_are_handed_over() =>
        Gen.Select(Gen.Int[0, 12], Gen.Int[0, 12], Gen.Int[0, 1000]).Sample((tablets, phones, seed) =>
        {
            var tablet = Enumerable.Range(1, tablets).Select(i => Entry("tablet", i, measure: Measure.Millilitres(i), minute: (i * seed) % 17)).ToList();
            var phone = Enumerable.Range(1, phones).Select(i => Entry("phone", i, measure: Measure.Millilitres(i), minute: (i * seed) % 13)).ToList();
            var one = PouredLog.Of(tablet).Merge(PouredLog.Of(phone));
            var other = PouredLog.Of(phone.Concat(phone)).Merge(PouredLog.Of(Enumerable.Reverse(tablet))).Merge(one);

            Assert.Equal(one.Entries, other.Entries);
            Assert.Equal(tablets + phones, one.Entries.Count);
            Assert.Equal(tablet, one.Entries.Where(entry => entry.Device == "tablet"));
            Assert.Empty(other.Refused);
            Assert.Equal(tablets, other.HandedOver("tablet"));
        });

    [Fact]
    public void A_device_that_began_its_log_again_loses_nothing()
    {
        var log = PouredLog.Of([Entry("tablet", 1, measure: Measure.Millilitres(30)), Entry("tablet", 1, measure: Measure.Millilitres(45))]);

        Assert.Equal(Measure.Millilitres(30), Assert.Single(log.Entries).Measure);
        Assert.Equal(Measure.Millilitres(45), Assert.Single(log.Refused).Measure);
    }

    [Fact]
    public void A_tick_can_be_taken_back()
    {
        var log = PouredLog.Of([Entry("tablet", 1, PouredKind.Ticked) with { Task = "juice:lime-juice" }, Entry("tablet", 2, PouredKind.Ticked) with { Task = "clean" }, Entry("phone", 1, PouredKind.Unticked, minute: 5) with { Task = "clean" }]);

        Assert.Equal(["juice:lime-juice"], log.Ticks().Keys);
    }
}
