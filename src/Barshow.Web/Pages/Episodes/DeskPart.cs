using Barshow.Engine.Episodes;
using Barshow.Engine.Publishing;
using Barshow.Web.Desk;
using Microsoft.AspNetCore.Components;

namespace Barshow.Web.Pages.Episodes;

/// <summary>A part of an episode's page: it reads the open episode from the desk and draws itself again whenever the desk has changed.</summary>
public abstract class DeskPart : ComponentBase, IDisposable
{
    /// <summary>The open episode.</summary>
    [CascadingParameter]
    public EpisodeDesk Desk { get; set; } = null!;

    /// <summary>The episode as it stands on the screen.</summary>
    protected Episode Episode => Desk.Episode;

    /// <summary>What it is looked up in.</summary>
    protected Bar Bar => Desk.Bar;

    /// <summary>What was computed of it.</summary>
    protected EpisodeWork Work => Desk.Work;

    /// <summary>Which unit stands first.</summary>
    protected UnitOrder Order => Desk.Bar.House.UnitOrder;

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        Desk.Changed += Redraw;
        Look();
    }

    /// <summary>Makes what is drawn out of what was computed; called once at first and after every change, never while drawing.</summary>
    protected virtual void Look()
    {
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Desk.Changed -= Redraw;
        Leave();
        GC.SuppressFinalize(this);
    }

    /// <summary>Lets go of what the part holds.</summary>
    protected virtual void Leave()
    {
    }

    private void Redraw() => _ = InvokeAsync(() =>
    {
        if (!Desk.IsOpen)
            return;
        Look();
        StateHasChanged();
    });
}
