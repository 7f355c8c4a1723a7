using System.Text.RegularExpressions;
using Barshow.Web.Look;
using MudBlazor;
using MudBlazor.Utilities;

namespace Barshow.Web.Tests.Look;

/// <summary>MudBlazor's theme repeats the tokens of the style sheet; the two may not drift apart.</summary>
public partial class ThemeAndTokensTests
{
    private static readonly (string Token, Func<Palette, MudColor> Of)[] Pairs =
    [
        ("green", palette => palette.Primary), ("on-green", palette => palette.PrimaryContrastText), ("brass", palette => palette.Secondary), ("green", palette => palette.Success),
        ("stop", palette => palette.Error), ("fix", palette => palette.Warning), ("note", palette => palette.Info), ("ink", palette => palette.TextPrimary), ("ink-2", palette => palette.TextSecondary),
        ("ground", palette => palette.Background), ("sunk", palette => palette.BackgroundGray), ("sheet", palette => palette.Surface), ("ground", palette => palette.AppbarBackground),
        ("rail-ground", palette => palette.DrawerBackground), ("rail-ink", palette => palette.DrawerText), ("rule", palette => palette.LinesDefault), ("rule-control", palette => palette.LinesInputs),
        ("rule", palette => palette.Divider), ("rule", palette => palette.TableLines),
    ];

    [Fact]
    public void The_light_palette_is_paper() => Compare("paper", BarshowTheme.Theme.PaletteLight);

    [Fact]
    public void The_dark_palette_is_bench() => Compare("bench", BarshowTheme.Theme.PaletteDark);

    [Theory]
    [InlineData("paper")]
    [InlineData("bench")]
    public void Every_text_pair_has_the_contrast_that_WCAG_2_2_asks(string theme)
    {
        var tokens = Tokens(theme);
        (string Text, string Ground, double Least)[] pairs =
        [
            ("ink", "ground", 4.5), ("ink", "sheet", 4.5), ("ink-2", "ground", 4.5), ("ink-2", "sunk", 4.5), ("green", "ground", 4.5), ("green", "green-wash", 4.5), ("on-green", "green", 4.5),
            ("brass", "ground", 4.5), ("brass", "sheet", 4.5), ("stop", "stop-wash", 4.5), ("fix", "fix-wash", 4.5), ("note", "note-wash", 4.5), ("ink-2", "stop-wash", 4.5), ("ink-2", "fix-wash", 4.5), ("ink-2", "note-wash", 4.5),
            ("rail-ink", "rail-ground", 4.5), ("rail-ink-2", "rail-ground", 4.5), ("rule-control", "ground", 3), ("brass-line", "ground", 3), ("focus", "ground", 3),
        ];

        var weak = pairs.Where(pair => Contrast(tokens[pair.Text], tokens[pair.Ground]) < pair.Least).Select(pair => $"{pair.Text} on {pair.Ground}");

        Assert.Empty(weak);
    }

    private static void Compare(string theme, Palette palette)
    {
        var tokens = Tokens(theme);
        foreach (var (token, of) in Pairs)
            Assert.Equal((token, new MudColor(tokens[token]).ToString(MudColorOutputFormats.Hex)), (token, of(palette).ToString(MudColorOutputFormats.Hex)));
    }

    private static Dictionary<string, string> Tokens(string theme)
    {
        var sheet = File.ReadAllText(Path.Combine(Repository.Root, "wwwroot", "css", "tokens.css"));
        var start = sheet.IndexOf($"[data-theme=\"{theme}\"] {{", StringComparison.Ordinal);
        var block = sheet[start..sheet.IndexOf('}', start)];
        return Token().Matches(block).ToDictionary(match => match.Groups[1].Value, match => match.Groups[2].Value);
    }

    // Contrast as WCAG 2.2 defines it, from relative luminance.
    private static double Contrast(string one, string other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string hex)
    {
        var color = new MudColor(hex);
        return 0.2126 * Linear(color.R) + 0.7152 * Linear(color.G) + 0.0722 * Linear(color.B);

        static double Linear(byte value) => value / 255.0 <= 0.04045 ? value / 255.0 / 12.92 : Math.Pow((value / 255.0 + 0.055) / 1.055, 2.4);
    }

    [GeneratedRegex(@"--([a-z0-9-]+):\s*(#[0-9A-Fa-f]{6})\b")]
    private static partial Regex Token();
}
