using Barshow.Engine.Findings;

namespace Barshow.Engine.Tests.Measures;

/// <summary>Findings as JSON.</summary>
public class FindingJsonTests
{
    [Fact]
    public void A_finding_has_its_five_keys_and_those_that_apply() =>
        Assert.Equal(
            """
            [
              {
                "kind": "not-pourable",
                "severity": "fix",
                "subject": "lime juice",
                "message": "0.9 oz lies between the marks.",
                "remedy": "Pour 1 oz."
              },
              {
                "kind": "pair-disagrees",
                "severity": "stop",
                "subject": "gin <b>",
                "message": "¾ oz stands beside 25 ml.",
                "remedy": "Say 22.5 ml.",
                "line": 12,
                "time_s": 83.25,
                "drink": "Garden Sour",
                "ingredient": "gin",
                "said": "25 ml",
                "expected": "22.5 ml"
              }
            ]

            """.ReplaceLineEndings("\n").Replace("<", "\\u003C", StringComparison.Ordinal).Replace(">", "\\u003E", StringComparison.Ordinal),
            FindingJson.File(
            [
                new(FindingCatalogue.NotPourable, "lime juice", "0.9 oz lies between the marks.", "Pour 1 oz."),
                new(FindingCatalogue.PairDisagrees, "gin <b>", "¾ oz stands beside 25 ml.", "Say 22.5 ml.")
                {
                    Line = 12,
                    TimeSeconds = 83.25,
                    Drink = "Garden Sour",
                    Ingredient = "gin",
                    Said = "25 ml",
                    Expected = "22.5 ml",
                },
            ]));

    [Fact]
    public void Without_findings_the_array_is_empty() => Assert.Equal("[]\n", FindingJson.File([]));

    [Fact]
    public void Half_a_surrogate_pair_is_replaced() => Assert.Equal("a\uFFFDb🍋", FindingJson.WellFormed("a\uD83Cb🍋"));
}
