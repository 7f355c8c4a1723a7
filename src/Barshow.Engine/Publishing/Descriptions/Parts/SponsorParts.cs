using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Publishing.Escaping;

namespace Barshow.Engine.Publishing.Descriptions.Parts;

/// <summary>Who paid, what was given, which links were promised.</summary>
internal static class SponsorParts
{
    /// <summary>The disclosure: the sponsor's agreed words, or a plain one until they are written; gifts alone are disclosed too.</summary>
    /// <remarks>A material connection is told where the claim is made and where it cannot be missed (16 CFR 255.5, 255.0(f)); gifts count, asked for or not.</remarks>
    public static PartText Disclosure(Episode episode, List<Finding> findings)
    {
        var sponsor = episode.Sponsor;
        var text = DescriptionText.Lines(sponsor.Disclosure);
        if (text.Length == 0 && sponsor.IsSponsored)
        {
            text = DescriptionText.Line($"Ad: paid partnership with {sponsor.Sponsor}.");
            findings.Add(DescriptionSentences.DisclosureUnwritten(sponsor.Sponsor, text));
        }
        else if (text.Length == 0 && episode.Gifts.Count > 0)
        {
            text = DescriptionText.Line($"This film uses gifts we did not pay for: {string.Join("; ", episode.Gifts)}.");
        }

        return new(DescriptionPart.Disclosure, text);
    }

    /// <summary>What was given.</summary>
    public static PartText Gifts(Episode episode) =>
        PartText.OfLines(DescriptionPart.Gifts, episode.Gifts.Select(gift => DescriptionText.Line($"Given to us free of charge: {gift}")));

    /// <summary>The links, label first.</summary>
    public static PartText Links(Episode episode, List<Finding> findings)
    {
        var lines = new List<string>();
        foreach (var link in episode.Links)
        {
            if (!WebAddress.TryRead(link.Address, out var address))
            {
                findings.Add(DescriptionSentences.LinkUnusable(link));
                address = DescriptionText.Line(link.Address);
            }

            var label = DescriptionText.Line(link.Label);
            lines.Add(label.Length == 0 ? address : $"{label}: {address}");
        }

        return PartText.OfLines(DescriptionPart.Links, lines);
    }
}
