using System.Text;
using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Publishing.Chapters;
using Barshow.Engine.Publishing.Descriptions;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Tests.Publishing;

public class DescriptionTests
{
    [Fact]
    public void Every_measured_line_stands_in_both_units()
    {
        var text = SaltLane.Describe(SaltLane.Evening).Text;

        Assert.Contains("""
            Recipes
            1 oz = 30 ml

            1. Harbour Sour
            2 oz · 60 ml white rum
            ¾ oz · 22.5 ml lime juice, freshly pressed
            ½ oz · 15 ml rich syrup
            1 egg white
            Shaken 12 s, fine-strained. Chilled coupe (or Nick and Nora). Garnish: lime wheel (or lime twist).

            2. Dune
            1½ oz · 45 ml white rum
            ½ oz · 15 ml orgeat
            ⅓ oz · 10 ml lime juice
            Top with soda water
            Built. Highball, cubed ice, straw.

            3. Kelp
            2 oz · 60 ml white rum
            2 dashes aromatic bitters
            1 barspoon (5 ml) rich syrup
            Stirred 25 s, strained. Nick and Nora.

            """, text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_house_may_put_millilitres_first() =>
        Assert.Contains("22.5 ml · ¾ oz lime juice", SaltLane.Describe(SaltLane.Evening, SaltLane.House with { UnitOrder = UnitOrder.MillilitresFirst }).Text, StringComparison.Ordinal);

    [Fact]
    public void The_episodes_convention_is_printed_and_used()
    {
        var text = SaltLane.Describe(SaltLane.Evening with { Convention = Convention.ImperialExact }).Text;

        Assert.Contains("1 oz = 28.41 ml", text, StringComparison.Ordinal);
        Assert.Contains("2 oz · 57 ml white rum", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_accepted_poured_amount_wins_over_the_episodes_and_the_librarys()
    {
        var line = SaltLane.HarbourSour.Spec.Lines[1].With(AmountLayer.Episode, Measure.Ounces(1), "more bite").With(AmountLayer.Poured, Measure.Ounces(5, 4), "poured so on film");
        var drink = SaltLane.HarbourSour with { Spec = SaltLane.HarbourSour.Spec with { Lines = [line] } };

        Assert.Contains("1¼ oz · 37.5 ml lime juice", SaltLane.Describe(SaltLane.Evening with { Lineup = [drink] }).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_other_side_as_written_is_kept_only_where_it_agrees_and_the_amount_was_not_changed_since()
    {
        var written = SaltLane.Line("3/4 oz", "lime juice") with { WrittenBeside = Measure.Millilitres(22) };
        var disagrees = SaltLane.Line("3/4 oz", "lime juice") with { WrittenBeside = Measure.Millilitres(25) };
        var changed = written.With(AmountLayer.Episode, Measure.Ounces(1), "more bite");

        Assert.Contains("¾ oz · 22 ml lime juice", Printed(written), StringComparison.Ordinal);
        Assert.Contains("¾ oz · 22.5 ml lime juice", Printed(disagrees), StringComparison.Ordinal);
        Assert.Contains("1 oz · 30 ml lime juice", Printed(changed), StringComparison.Ordinal);

        static string Printed(SpecLine line) =>
            SaltLane.Describe(SaltLane.Evening with { Lineup = [SaltLane.HarbourSour with { Spec = SaltLane.HarbourSour.Spec with { Lines = [line] } }] }).Text;
    }

    [Fact]
    public void A_line_without_an_amount_is_printed_and_found()
    {
        var drink = SaltLane.HarbourSour with { Spec = SaltLane.HarbourSour.Spec with { Lines = [new() { Name = "white rum", BriefLine = 7 }] } };

        var block = SaltLane.Describe(SaltLane.Evening with { Lineup = [drink] });

        var finding = Assert.Single(block.Findings, finding => finding.Kind == FindingCatalogue.LineWithoutAmount);
        Assert.Equal("white rum in Harbour Sour has no amount, so the description prints its name alone.", finding.Message);
        Assert.Equal(7, finding.Line);
    }

    [Fact]
    public void The_parts_stand_in_the_templates_order_and_empty_ones_leave_no_heading()
    {
        var block = SaltLane.Describe(SaltLane.Evening);

        Assert.Equal(
            [DescriptionPart.Hook, DescriptionPart.Recipes, DescriptionPart.MakeAhead, DescriptionPart.StandIns, DescriptionPart.Shopping, DescriptionPart.Questions, DescriptionPart.Tools, DescriptionPart.Cautions],
            block.Sections.Where(section => section.Part is not null).Select(section => section.Part!.Value));
        Assert.DoesNotContain("Chapters", block.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Gifts", block.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("\n\n\n", block.Text, StringComparison.Ordinal);
        Assert.Equal(block.Text, string.Concat(block.Sections.Select(section => section.Text)));
    }

    [Fact]
    public void Chapters_stand_before_the_recipes_once_the_film_has_times()
    {
        var block = SaltLane.Describe(SaltLane.Filmed);

        Assert.Contains("Chapters\n0:00 Welcome\n0:42 Harbour Sour\n3:10 Dune\n6:40 Kelp\n\nRecipes", block.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(block.Findings, finding => finding.Kind == FindingCatalogue.LooksLikeChapter);
    }

    [Fact]
    public void A_house_prep_is_scaled_to_one_drink_and_to_all() =>
        Assert.Contains("""
            Rich syrup
            For one drink, ½ oz · 15 ml: 13 g white sugar, 6.5 g water
            For all 2, ⅔ oz · 20 ml: 18 g white sugar, 9 g water
            Stir over low heat until clear.
            Best within 4 weeks, keep 90 days at most, cold and covered.
            """, SaltLane.Describe(SaltLane.Evening).Text, StringComparison.Ordinal);

    [Fact]
    public void A_house_prep_measured_in_ounces_follows_the_episodes_convention()
    {
        var syrup = SaltLane.Shelf[Slug.Of("rich syrup")]! with { Prep = new() { Inputs = [new(Slug.Of("honey"), Measure.Ounces(4)), new(Slug.Of("water"), Measure.Ounces(4))], Yield = Measure.Ounces(8) } };
        var bar = SaltLane.Bar with { Ingredients = new([syrup, .. SaltLane.Shelf.All]) };
        var episode = SaltLane.Evening with { Convention = Convention.ImperialExact, Lineup = [SaltLane.HarbourSour] };

        var text = DescriptionComposer.Compose(new() { Episode = episode, Bar = bar }, ChapterPlanner.Plan(episode, new())).Text;

        // Half an imperial ounce is 14.2 ml, made of equal parts: a quarter ounce, 7.1 ml, of each.
        Assert.Contains("For one drink, ½ oz · 14 ml: ¼ oz · 7 ml honey, ¼ oz · 7 ml water", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Stand_ins_give_their_own_amount_and_what_must_not_stand_in_says_why() =>
        Assert.Contains("""
            Instead
            No rich syrup? ⅓ oz · 10 ml honey for ½ oz · 15 ml; rounder.
            Not bottled lime cordial for lime juice: it is sugar and little acid.
            """, SaltLane.Describe(SaltLane.Evening).Text, StringComparison.Ordinal);

    [Fact]
    public void The_shopping_list_counts_each_drink_once_and_says_what_the_first_things_make()
    {
        var text = SaltLane.Describe(SaltLane.Evening).Text;

        Assert.Contains("White rum: 700 ml bottle, 165 ml used", text, StringComparison.Ordinal);
        Assert.Contains("From your kitchen: white sugar, water", text, StringComparison.Ordinal);
        Assert.Contains("How many drinks you can make with white rum, aromatic bitters: 1 (Kelp); + lime, egg white: 2 (Harbour Sour); + orgeat, soda water: 3 (Dune)", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("{disclosure}\n{hook}\n\n{chapters}\n\n{recipes}\n\n{gifts}\n\n{links}\n\nCautions\n{cautions}\n\n{credits}")]
    public void Cautions_stand_last_after_the_credits_too(string? template)
    {
        var description = new DescriptionTemplate { Credits = "Filmed at Salt Lane." };

        var block = SaltLane.Describe(SaltLane.Evening, SaltLane.House with { Description = template is null ? description : description with { Text = template } });

        Assert.Equal(DescriptionPart.Cautions, block.Sections[^1].Part);
        Assert.Contains("Filmed at Salt Lane.\n\nCautions\n", block.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Cautions_stand_last_and_name_allergens_hazards_and_standard_drinks()
    {
        var block = SaltLane.Describe(SaltLane.Evening);

        Assert.Equal(DescriptionPart.Cautions, block.Sections[^1].Part);
        // 60 ml at 40 % is 24 ml of ethanol; a US standard drink is 0.6 US fl oz, 17.74 ml (NIAAA): 1.35.
        Assert.Equal("""
            Contains: egg (Harbour Sour); almond (tree nuts) (Dune).
            Check the label: aromatic bitters for tree nuts (Kelp).
            Raw egg (Harbour Sour): use pasteurised egg, especially for the young, old, pregnant or unwell.
            Fresh juice (Harbour Sour, Dune): not pasteurised; take care for the young, old, pregnant or unwell.
            US standard drinks (14 g of alcohol each): 1.0 (Dune), 1.4 (Harbour Sour, Kelp).
            For adults of legal drinking age. Drink responsibly, never drink and drive. Follow local rules and licensed practice.
            """, block.Sections[^1].Text);
    }

    [Fact]
    public void An_ingredient_the_house_does_not_know_is_never_passed_as_free_from_allergens()
    {
        var drink = SaltLane.HarbourSour with { Spec = SaltLane.HarbourSour.Spec with { Lines = [SaltLane.Line("15 ml", "mystery liqueur")] } };

        Assert.Contains("Check the label: mystery liqueur, allergens not known (Harbour Sour).", SaltLane.Describe(SaltLane.Evening with { Lineup = [drink] }).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_allergen_reaches_the_drink_through_a_house_prep()
    {
        var nutSyrup = new Ingredient { Slug = Slug.Of("nut syrup"), Name = "Nut syrup", Kind = IngredientKind.Syrup, Prep = new() { Inputs = [new(Slug.Of("orgeat"), Measure.Millilitres(100))], Yield = Measure.Millilitres(100) } };
        var drink = SaltLane.HarbourSour with { Spec = SaltLane.HarbourSour.Spec with { Lines = [SaltLane.Line("15 ml", "nut syrup")], Garnish = null } };

        var cautions = Engine.Publishing.Cautions.LineupCautions.Of(SaltLane.Evening with { Lineup = [drink] }, new([nutSyrup, .. SaltLane.Shelf.All]));

        Assert.Equal(new("Harbour Sour", Allergen.Nuts, AllergenPresence.Contains, "Nut syrup", "almond"), Assert.Single(cautions.Allergens));
    }

    [Fact]
    public void The_sponsors_disclosure_is_the_first_line()
    {
        var block = SaltLane.Describe(SaltLane.Evening with { Sponsor = new() { Sponsor = "a rum maker", Disclosure = "Ad: paid for by a rum maker." } });

        Assert.StartsWith("Ad: paid for by a rum maker.\nThree drinks", block.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(block.Findings, finding => finding.Kind == FindingCatalogue.DisclosureUnwritten);
    }

    [Fact]
    public void A_sponsor_without_words_gets_plain_ones_and_a_finding()
    {
        var block = SaltLane.Describe(SaltLane.Evening with { Sponsor = new() { Sponsor = "a rum maker" } });

        Assert.StartsWith("Ad: paid partnership with a rum maker.\n", block.Text, StringComparison.Ordinal);
        Assert.Equal(
            "a rum maker pays, but the brief holds no disclosure; \"Ad: paid partnership with a rum maker.\" stands first until it does.",
            Assert.Single(block.Findings, finding => finding.Kind == FindingCatalogue.DisclosureUnwritten).Message);
    }

    [Fact]
    public void Gifts_alone_are_disclosed_first_and_listed()
    {
        var text = SaltLane.Describe(SaltLane.Evening with { Gifts = ["six coupes"] }).Text;

        Assert.StartsWith("This film uses gifts we did not pay for: six coupes.\n", text, StringComparison.Ordinal);
        Assert.Contains("Gifts\nGiven to us free of charge: six coupes\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Promised_links_stand_with_their_address_and_one_that_cannot_be_followed_is_found()
    {
        var block = SaltLane.Describe(SaltLane.Evening with { Links = [new("Jigger guide", "https://example.org/jiggers"), new("Syrup film", "example dot org")] });

        Assert.Contains("Links\nJigger guide: https://example.org/jiggers\nSyrup film: example dot org\n", block.Text, StringComparison.Ordinal);
        Assert.Equal(
            "\"example dot org\" is no full web address, so viewers cannot follow \"Syrup film\"; it is printed as it stands.",
            Assert.Single(block.Findings, finding => finding.Kind == FindingCatalogue.LinkUnusable).Message);
    }

    [Fact]
    public void Leaves_and_cuts_are_named_after_what_they_are_of()
    {
        var spec = SaltLane.Dune.Spec with { Lines = [SaltLane.Line("6..8 leaf", "mint"), SaltLane.Line("1 wheel", "lime"), SaltLane.Line("1/2 bunch", "mint"), SaltLane.Line("60 ml", "soda water") with { Use = LineUse.Topped }] };

        var text = SaltLane.Describe(SaltLane.Evening with { Lineup = [SaltLane.Dune with { Spec = spec }] }).Text;

        Assert.Contains("6–8 mint leaves\n1 lime wheel\n½ bunch mint\nTop with 2 oz · 60 ml soda water\n", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2, "A, B")]
    [InlineData(6, "all drinks")]
    [InlineData(5, "all but F")]
    [InlineData(3, "A, B, C")]
    public void Many_drinks_are_named_in_few_words(int named, string words)
    {
        var lineup = "ABCDEF".Select(letter => Lineups.Drink(letter.ToString())).ToList();

        Assert.Equal(words, Engine.Publishing.Descriptions.Parts.CautionPart.Drinks(lineup.Take(named).Select(drink => drink.Name), SaltLane.Evening with { Lineup = lineup }));
    }

    [Fact]
    public void Earlier_features_are_named_with_their_film_and_day()
    {
        var results = SaltLane.Results(SaltLane.Evening) with { Earlier = [new("Dune", "Six on gin", new(2026, 2, 7), "https://example.org/six")] };

        var text = DescriptionComposer.Compose(results, ChapterPlanner.Plan(results.Episode, new())).Text;

        Assert.Contains("Shown before\nDune: Six on gin, 2026-02-07 https://example.org/six\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Length_is_told_in_characters_and_in_bytes_for_each_section()
    {
        var block = SaltLane.Describe(SaltLane.Evening);

        Assert.Equal(Encoding.UTF8.GetByteCount(block.Text), block.Bytes);
        Assert.Equal(block.Bytes, block.Sections.Sum(section => section.Bytes));
        Assert.True(block.Characters < block.Bytes, "½ and · are two bytes each.");
        Assert.Equal(block.Characters, block.Sections.Sum(section => section.Characters));
    }

    // UTF-8 (RFC 3629): ½ and · take two bytes, ⅔ and — three, an emoji beyond the first plane four.
    [Theory]
    [InlineData("½", 1, 2)]
    [InlineData("·", 1, 2)]
    [InlineData("⅔", 1, 3)]
    [InlineData("—", 1, 3)]
    [InlineData("🍹", 1, 4)]
    [InlineData("e\u0301", 1, 3)]
    public void A_character_is_what_a_person_counts_and_bytes_are_utf8(string text, int characters, int bytes)
    {
        Assert.Equal(characters, TextLength.Characters(text));
        Assert.Equal(bytes, TextLength.Bytes(text));
    }
}
