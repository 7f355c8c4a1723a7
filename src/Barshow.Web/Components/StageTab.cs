using Barshow.Engine.Findings;

namespace Barshow.Web.Components;

/// <summary>One stage on the stage rule.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Href">Its address.</param>
/// <param name="Open">How many findings are open.</param>
/// <param name="Worst">The worst of them; null when there is none.</param>
public sealed record StageTab(string Name, string Href, int Open, Severity? Worst);
