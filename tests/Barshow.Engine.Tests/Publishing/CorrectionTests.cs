using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures;
using Barshow.Engine.Publishing.Corrections;
using Barshow.Engine.Publishing.Tables;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Tests.Publishing;

public class CorrectionTests
{
    private static readonly DateTimeOffset First = new(2027, 3, 20, 9, 0, 0, TimeSpan.FromHours(11));

    [Fact]
    public void What_was_published_stays_as_it_was_whatever_changes_later()
    {
        var published = Published(SaltLane.Filmed);

        var version = Assert.Single(published.Publications);
        Assert.Equal(1, version.Version);
        Assert.Equal("", version.Notice);
        Assert.Equal(["1½ oz · 45 ml white rum", "½ oz · 15 ml orgeat", "⅓ oz · 10 ml lime juice", "top with soda water", "Built. Highball, cubed ice, straw."], version.Drinks[1].Lines);
    }

    [Fact]
    public void An_amount_corrected_after_publishing_gives_a_new_version_and_a_notice()
    {
        var corrected = Corrected(Published(SaltLane.Filmed));

        var version = CorrectionNotice.Next(SaltLane.Results(corrected), SaltLane.Describe(corrected), First.AddDays(4));

        Assert.Equal(2, version.Version);
        Assert.Equal("Correction, 24 March 2027. Dune: ½ oz · 15 ml lime juice, not ⅓ oz · 10 ml lime juice.", version.Notice);
        Assert.Contains("½ oz · 15 ml lime juice", version.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void A_drink_that_came_or_went_is_told()
    {
        var published = Published(SaltLane.Filmed with { Lineup = [.. SaltLane.Filmed.Lineup.Take(2)] });

        var notice = CorrectionNotice.Notice(CorrectionNotice.Since(SaltLane.Results(published with { Lineup = [.. SaltLane.Filmed.Lineup.Skip(1)] })), null);

        Assert.Equal("Correction. Kelp: new in the lineup. Harbour Sour: no longer in the lineup.", notice);
    }

    [Fact]
    public void Nothing_changed_or_nothing_published_needs_no_notice()
    {
        Assert.Empty(CorrectionNotice.Since(SaltLane.Results(SaltLane.Filmed)));
        Assert.Empty(CorrectionNotice.Since(SaltLane.Results(Published(SaltLane.Filmed))));
        Assert.Equal("", CorrectionNotice.Notice([], null));
        Assert.Null(CorrectionNotice.Write(SaltLane.Results(Published(SaltLane.Filmed)), null));
    }

    [Fact]
    public void The_file_of_corrections_tells_what_is_due_and_then_what_was_told()
    {
        var once = Corrected(Published(SaltLane.Filmed));
        var told = once with { Publications = [.. once.Publications, CorrectionNotice.Next(SaltLane.Results(once), SaltLane.Describe(once), First.AddDays(4))] };
        var twice = told with { Lineup = [told.Lineup[0], told.Lineup[1], told.Lineup[2] with { Spec = told.Lineup[2].Spec with { Method = new(MethodKind.Stirred, Seconds: 40) } }] };

        Assert.Equal(
            "Not published yet\nCorrection, 1 April 2027. Kelp: Stirred 40 s, strained. Nick and Nora, not Stirred 25 s, strained. Nick and Nora.\n\nVersion 2, 2027-03-24 09:00 +11:00\nCorrection, 24 March 2027. Dune: ½ oz · 15 ml lime juice, not ⅓ oz · 10 ml lime juice.\n",
            CorrectionNotice.Write(SaltLane.Results(twice), new(2027, 4, 1)));
    }

    [Fact]
    public void A_pick_up_list_holds_every_open_finding_with_words_and_a_time_in_film_order()
    {
        var late = new Finding(FindingCatalogue.PairDisagrees, "Dune", "25 ml is said.", "Say 22.5 ml.") { TimeSeconds = 221, Drink = "Dune", Ingredient = "lime juice", Said = "25 ml", Expected = "22.5 ml" };
        var early = late with { TimeSeconds = 61.5, Drink = "Kelp" };

        var table = PickUpTable.Write([late, early, new(FindingCatalogue.ChaptersWithheld, "x", "A.", "B.")])!.Split("\r\n");

        Assert.Equal("1:01,61.5,stop,pair-disagrees,Kelp,lime juice,25 ml,22.5 ml,25 ml is said.,Say 22.5 ml.", table[1]);
        Assert.StartsWith("3:41,221,", table[2], StringComparison.Ordinal);
        Assert.Equal(4, table.Length);
        Assert.Null(PickUpTable.Write([]));
    }

    private static Episode Published(Episode episode) =>
        episode with { Publications = [CorrectionNotice.Next(SaltLane.Results(episode), SaltLane.Describe(episode), First)] };

    private static Episode Corrected(Episode episode)
    {
        var dune = episode.Lineup[1];
        SpecLine[] lines = [.. dune.Spec.Lines.Select(line => line.Name == "lime juice" ? line.With(AmountLayer.Published, Measure.Ounces(1, 2), "misread on set") : line)];
        return episode with { Lineup = [episode.Lineup[0], dune with { Spec = dune.Spec with { Lines = lines } }, .. episode.Lineup.Skip(2)] };
    }
}
