using Barshow.Engine.Ingredients;

namespace Barshow.Engine.Tests.Ingredients;

public class BottleSizeTests
{
    // 27 CFR 5.203(a)(1) with T.D. TTB-176, and T.D. TTB-200 (90 FR 1868 to 1876, from 2025-01-10).
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(1800)]
    [InlineData(1750)]
    [InlineData(1000)]
    [InlineData(900)]
    [InlineData(750)]
    [InlineData(720)]
    [InlineData(700)]
    [InlineData(375)]
    [InlineData(200)]
    [InlineData(100)]
    [InlineData(50)]
    [InlineData(3750)]
    [InlineData(3000)]
    [InlineData(2000)]
    [InlineData(1500)]
    [InlineData(945)]
    [InlineData(710)]
    [InlineData(570)]
    [InlineData(500)]
    [InlineData(475)]
    [InlineData(355)]
    [InlineData(350)]
    [InlineData(331)]
    [InlineData(250)]
    [InlineData(187)]
    public void United_states_law_allows_this_size_for_spirits(int millilitres) => Assert.Contains(millilitres, BottleSizes.UnitedStatesSpirits);

    [Fact]
    public void United_states_law_allows_25_sizes_and_no_other() => Assert.Equal(25, BottleSizes.UnitedStatesSpirits.Distinct().Count());

    // gov.uk, Weights and measures: specified quantities; this and the next three.
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(100)]
    [InlineData(200)]
    [InlineData(350)]
    [InlineData(500)]
    [InlineData(700)]
    [InlineData(1000)]
    [InlineData(1500)]
    [InlineData(1750)]
    [InlineData(2000)]
    public void United_kingdom_law_allows_this_size_for_spirits(int millilitres) => Assert.Contains(millilitres, BottleSizes.UnitedKingdomSpirits);

    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(100)]
    [InlineData(200)]
    [InlineData(375)]
    [InlineData(500)]
    [InlineData(750)]
    [InlineData(1000)]
    [InlineData(1500)]
    public void United_kingdom_law_allows_this_size_for_fortified_wine(int millilitres) => Assert.Contains(millilitres, BottleSizes.UnitedKingdomFortifiedWine);

    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(125)]
    [InlineData(200)]
    [InlineData(375)]
    [InlineData(750)]
    [InlineData(1500)]
    public void United_kingdom_law_allows_this_size_for_sparkling_wine(int millilitres) => Assert.Contains(millilitres, BottleSizes.UnitedKingdomSparklingWine);

    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(100)]
    [InlineData(187)]
    [InlineData(250)]
    [InlineData(375)]
    [InlineData(500)]
    [InlineData(750)]
    [InlineData(1000)]
    [InlineData(1500)]
    public void United_kingdom_law_allows_this_size_for_still_wine(int millilitres) => Assert.Contains(millilitres, BottleSizes.UnitedKingdomStillWine);

    [Fact]
    public void The_united_kingdom_lists_hold_no_other_sizes() => Assert.Equal(
        [9, 7, 5, 8],
        [BottleSizes.UnitedKingdomSpirits.Count, BottleSizes.UnitedKingdomFortifiedWine.Count, BottleSizes.UnitedKingdomSparklingWine.Count, BottleSizes.UnitedKingdomStillWine.Count]);

    // 27 CFR 19.356(b): by nominal size, at the borders of each class.
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(1000, 0.015)]
    [InlineData(999, 0.02)]
    [InlineData(376, 0.02)]
    [InlineData(375, 0.03)]
    [InlineData(101, 0.03)]
    [InlineData(100, 0.045)]
    public void A_bottle_may_lie_so_far_off_its_size(double millilitres, double share) => Assert.Equal(share, BottleSizes.UnitedStatesTolerance(millilitres));

    // 27 CFR 19.356(c): a label of 40 % may stand on 39.7 to 40.3.
    [Fact]
    [Trait("Evidence", "read")]
    public void A_label_may_lie_three_tenths_of_a_percent_off() => Assert.Equal(0.3, BottleSizes.UnitedStatesStrengthTolerance);

    [Theory]
    [InlineData(700, true)]
    [InlineData(50, true)]
    [InlineData(2250, true)]
    [InlineData(70, true)]
    [InlineData(650, false)]
    [InlineData(0, false)]
    [InlineData(-700, false)]
    public void A_size_is_known_or_not(double millilitres, bool known) => Assert.Equal(known, BottleSizes.IsSpiritsSize(millilitres));

    [Fact]
    public void The_nearest_sizes_are_found() => Assert.Equal([710, 720, 700], BottleSizes.NearestSpirits(711, 3));
}
