using Microsoft.JSInterop;

namespace Barshow.Web.Look;

/// <summary>Which of the two themes one browser shows; kept in a cookie, so that the first page is drawn right.</summary>
public sealed class ThemeChoice(IJSRuntime script)
{
    /// <summary>The cookie that keeps it.</summary>
    public const string Cookie = "barshow-theme";

    /// <summary>The light theme, the desk.</summary>
    public const string Paper = "paper";

    /// <summary>The dark theme.</summary>
    public const string Bench = "bench";

    /// <summary>Raised when the user has switched.</summary>
    public event Action? Changed;

    /// <summary>Whether the dark theme is shown.</summary>
    public bool IsBench { get; private set; }

    /// <summary>The theme a cookie's value names; paper for anything else.</summary>
    public static string Named(string? value) => value == Bench ? Bench : Paper;

    /// <summary>Starts with what the page was drawn with.</summary>
    public void Begin(string? theme) => IsBench = theme == Bench;

    /// <summary>Shows the other theme and keeps it.</summary>
    public async Task SwitchAsync()
    {
        IsBench = !IsBench;
        await using var look = await script.InvokeAsync<IJSObjectReference>("import", "./js/look.js");
        await look.InvokeVoidAsync("show", Cookie, IsBench ? Bench : Paper);
        Changed?.Invoke();
    }
}
