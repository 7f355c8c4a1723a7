using Barshow.Engine.Episodes;

namespace Barshow.Web.Pages.Episodes.Publish;

/// <summary>What the parts of a description are called on the page.</summary>
internal static class PartHeadings
{
    public static string Of(DescriptionPart part) => part switch
    {
        DescriptionPart.MakeAhead => "Make ahead",
        DescriptionPart.StandIns => "Stand-ins",
        DescriptionPart.Earlier => "Shown before",
        _ => part.ToString(),
    };
}
