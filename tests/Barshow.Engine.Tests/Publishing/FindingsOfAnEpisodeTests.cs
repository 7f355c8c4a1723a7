using Barshow.Engine.Episodes;
using Barshow.Engine.Episodes.Briefs;
using Barshow.Engine.Featured;
using Barshow.Engine.Findings;
using Barshow.Engine.Publishing;
using Barshow.Engine.Tests.Episodes;

namespace Barshow.Engine.Tests.Publishing;

public class FindingsOfAnEpisodeTests
{
    [Fact]
    public void An_ingredient_the_house_does_not_know_is_told_once_with_its_line()
    {
        var read = BriefReader.Read("T\nBottle: white rum, 700 ml, 40%\n\nA\n2 oz white rum\n1 oz quince nectar\nShaken, coupe, no garnish", SmallBar.Bar);

        var work = EpisodeWork.Of(read.Episode!, SmallBar.Bar, FeaturedLog.Empty, new DateOnly(2027, 1, 1), read: read.Findings);

        var finding = Assert.Single(work.Findings, finding => finding.Message.Contains("quince nectar", StringComparison.Ordinal) && finding.Severity != Severity.Note);
        Assert.Equal(FindingCatalogue.IngredientUnknown, finding.Kind);
        Assert.Equal(6, finding.Line);
    }

    [Fact]
    public void An_episode_without_drinks_says_what_to_do_next()
    {
        var work = EpisodeWork.Of(new Episode { Slug = Barshow.Engine.Names.Slug.Of("empty"), Title = "Empty" }, SmallBar.Bar, FeaturedLog.Empty, new DateOnly(2027, 1, 1));

        Assert.Contains(work.At(Stage.Plan), finding => finding.Message == "The lineup has no drink yet." && finding.Remedy == "Add drinks from the library, or paste a brief.");
    }
}
