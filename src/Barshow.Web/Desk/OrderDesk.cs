using Barshow.Engine.Episodes;

namespace Barshow.Web.Desk;

/// <summary>The running order of an open episode.</summary>
public sealed class OrderDesk
{
    public void Forget()
    {
    }

    public void Doubt(Episode episode) => _ = episode;

    public void Plan(Episode episode, Bar bar, Action changed)
    {
        _ = (episode, bar);
        changed();
    }
}
