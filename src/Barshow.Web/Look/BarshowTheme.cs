using MudBlazor;

namespace Barshow.Web.Look;

/// <summary>The look for MudBlazor's parts: the values of <c>wwwroot/css/tokens.css</c>, which a test compares with these.</summary>
public static class BarshowTheme
{
    private const string Text = "Atkinson Hyperlegible Next";
    private const string Display = "Besley";

    /// <summary>Paper as the light palette, bench as the dark one.</summary>
    public static MudTheme Theme { get; } = new()
    {
        PaletteLight = new PaletteLight
        {
            Primary = "#14513C",
            PrimaryContrastText = "#F4F7EC",
            Secondary = "#7A5A0E",
            Success = "#14513C",
            Error = "#9A2620",
            Warning = "#854400",
            Info = "#235470",
            TextPrimary = "#16221C",
            TextSecondary = "#46544B",
            Background = "#E9ECE1",
            BackgroundGray = "#DEE3D4",
            Surface = "#FAFAF4",
            AppbarBackground = "#E9ECE1",
            AppbarText = "#16221C",
            DrawerBackground = "#10342A",
            DrawerText = "#F0F4E8",
            DrawerIcon = "#F0F4E8",
            LinesDefault = "#C3CAB8",
            LinesInputs = "#737E70",
            Divider = "#C3CAB8",
            TableLines = "#C3CAB8",
            ActionDefault = "#46544B",
        },
        PaletteDark = new PaletteDark
        {
            Primary = "#93D6B1",
            PrimaryContrastText = "#0B1A13",
            Secondary = "#E8C472",
            Success = "#93D6B1",
            Error = "#FFA79B",
            Warning = "#F7BD6B",
            Info = "#A6D1EA",
            TextPrimary = "#F3F5E9",
            TextSecondary = "#B9C5BA",
            Background = "#0D1411",
            BackgroundGray = "#1D2823",
            Surface = "#151E1A",
            AppbarBackground = "#0D1411",
            AppbarText = "#F3F5E9",
            DrawerBackground = "#0A100D",
            DrawerText = "#F3F5E9",
            DrawerIcon = "#F3F5E9",
            LinesDefault = "#31403A",
            LinesInputs = "#7F9388",
            Divider = "#31403A",
            TableLines = "#31403A",
            ActionDefault = "#B9C5BA",
        },
        LayoutProperties = new LayoutProperties { DefaultBorderRadius = "2px", DrawerWidthLeft = "184px" },
        Typography = new Typography
        {
            Default = new DefaultTypography { FontFamily = [Text, "Segoe UI", "system-ui", "sans-serif"], FontSize = "1rem", LineHeight = "1.5", LetterSpacing = "normal" },
            H1 = new H1Typography { FontFamily = [Display, "Georgia", "serif"], FontWeight = "560", FontSize = "var(--text-2xl)", LineHeight = "1.12" },
            H2 = new H2Typography { FontFamily = [Display, "Georgia", "serif"], FontWeight = "560", FontSize = "1.5rem", LineHeight = "1.2" },
            H5 = new H5Typography { FontFamily = [Display, "Georgia", "serif"], FontWeight = "560", FontSize = "1.1875rem", LineHeight = "1.25" },
            H6 = new H6Typography { FontFamily = [Display, "Georgia", "serif"], FontWeight = "560", FontSize = "1.1875rem", LineHeight = "1.25" },
            Button = new ButtonTypography { FontWeight = "600", FontSize = ".875rem", TextTransform = "none", LetterSpacing = "normal" },
        },
    };
}
