namespace Barshow.Engine.Planning;

/// <summary>Whose need is counted.</summary>
public enum DemandFor
{
    /// <summary>Each drink made once at home; decides whether a claim of the title holds; is published.</summary>
    Viewer,

    /// <summary>Takes, tasted swap-outs, rehearsal and spill; decides what is ordered.</summary>
    Shoot,
}
