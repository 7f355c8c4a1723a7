using System.Text.RegularExpressions;
using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Publishing.Escaping;

namespace Barshow.Engine.Publishing.Descriptions;

/// <summary>A piece of a template's paragraph: own text, or a slot for a part.</summary>
internal readonly record struct TemplatePiece(string Own, DescriptionPart? Slot);

/// <summary>Reads a template into paragraphs of own text and slots.</summary>
internal static partial class TemplateReader
{
    /// <summary>The paragraphs; disclosure and cautions are put in at the top and the bottom where the template has no slot for them, and a paragraph of the cautions alone goes last wherever it was written.</summary>
    public static List<List<TemplatePiece>> Read(string template, List<Finding> findings)
    {
        var paragraphs = new List<List<TemplatePiece>>();
        var current = new List<TemplatePiece>();
        var seen = new HashSet<DescriptionPart>();
        var number = 0;
        foreach (var line in PlainText.Lines(template).Split('\n'))
        {
            number++;
            if (line.Trim().Length == 0)
            {
                Close();
                continue;
            }

            if (current.Count > 0)
                current.Add(new("\n", null));
            ReadLine(line, number, current, seen, findings);
        }

        Close();
        Require(DescriptionPart.Disclosure, 0);
        Require(DescriptionPart.Recipes, paragraphs.Count);
        Require(DescriptionPart.Chapters, 1);
        Require(DescriptionPart.Gifts, paragraphs.Count);
        Require(DescriptionPart.Links, paragraphs.Count);
        Require(DescriptionPart.Cautions, paragraphs.Count);
        CautionsLast();
        return paragraphs;

        void Close()
        {
            if (current.Count > 0)
                paragraphs.Add(current);
            current = [];
        }

        void CautionsLast()
        {
            var at = paragraphs.FindIndex(paragraph => paragraph.Any(piece => piece.Slot is DescriptionPart.Cautions) && paragraph.TrueForAll(piece => piece.Slot is null or DescriptionPart.Cautions));
            if (at < 0)
                return;
            var cautions = paragraphs[at];
            paragraphs.RemoveAt(at);
            paragraphs.Add(cautions);
        }

        void Require(DescriptionPart part, int at)
        {
            if (seen.Add(part))
            {
                paragraphs.Insert(Math.Min(at, paragraphs.Count), [new("", part)]);
                findings.Add(DescriptionSentences.SlotMissing(part));
            }
        }
    }

    private static void ReadLine(string line, int number, List<TemplatePiece> pieces, HashSet<DescriptionPart> seen, List<Finding> findings)
    {
        var at = 0;
        foreach (Match match in Slot().Matches(line))
        {
            AddOwn(line[at..match.Index]);
            at = match.Index + match.Length;
            var name = match.Groups[1].Value.Trim().ToLowerInvariant();
            var part = Enum.GetValues<DescriptionPart>().Cast<DescriptionPart?>().FirstOrDefault(part => DescriptionTemplate.SlotOf(part!.Value) == name);
            if (part is not { } known)
                findings.Add(DescriptionSentences.SlotUnknown(match.Value, number));
            else if (!seen.Add(known))
                findings.Add(DescriptionSentences.SlotTwice(match.Value, number));
            else
                pieces.Add(new("", known));
        }

        AddOwn(line[at..]);

        void AddOwn(string own)
        {
            if (own.Length > 0)
                pieces.Add(new(DescriptionText.Lines(own), null));
        }
    }

    [GeneratedRegex(@"\{([^{}\n]{1,40})\}", RegexOptions.CultureInvariant)]
    private static partial Regex Slot();
}
