using System.Text;
using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Planning;
using Barshow.Engine.Planning.Demand;
using Barshow.Engine.Publishing.Chapters;
using Barshow.Engine.Publishing.Descriptions.Parts;

namespace Barshow.Engine.Publishing.Descriptions;

/// <summary>Writes the description from the house's template, and shortens it in the house's order when it is longer than the page takes.</summary>
public sealed class DescriptionComposer
{
    private readonly DescriptionTemplate _template;
    private readonly int _limit;
    private readonly List<Finding> _findings = [];
    private readonly Dictionary<DescriptionPart, PartText> _parts;
    private readonly List<List<TemplatePiece>> _paragraphs;
    private readonly Dictionary<DescriptionPart, Shortening> _shortened = [];

    private DescriptionComposer(EpisodeResults results, ChapterList chapters)
    {
        var house = results.Bar.House;
        _template = house.Description;
        _limit = house.Limits.DescriptionBytes;
        _parts = Parts(results, chapters, new(results.Episode.Convention, house)).ToDictionary(part => part.Part);
        _paragraphs = TemplateReader.Read(_template.Text, _findings);
    }

    /// <summary>The description of an episode.</summary>
    /// <param name="results">The episode with all that was computed of it.</param>
    /// <param name="chapters">Its chapters.</param>
    public static DescriptionBlock Compose(EpisodeResults results, ChapterList chapters)
    {
        ArgumentNullException.ThrowIfNull(results);
        ArgumentNullException.ThrowIfNull(chapters);
        var composer = new DescriptionComposer(results, chapters);
        return composer.Compose(results.Episode, results.Bar.House.Limits, chapters);
    }

    private IEnumerable<PartText> Parts(EpisodeResults results, ChapterList chapters, LinePrinter printer)
    {
        var (episode, bar) = (results.Episode, results.Bar);
        var demand = results.ViewerBasket?.Demand ?? DemandPlanner.Of(episode, bar, DemandFor.Viewer);
        yield return SponsorParts.Disclosure(episode, _findings);
        yield return FramingParts.Hook(episode);
        yield return PartText.OfLines(DescriptionPart.Chapters, chapters.FitForDescription ? chapters.Chapters.Select(chapter => chapter.ToString()) : []);
        yield return RecipePart.Write(episode, bar, printer, _findings);
        yield return MakeAheadPart.Write(demand, bar, printer);
        yield return StandInPart.Write(episode, bar, printer);
        yield return ShoppingPart.Write(episode, results.ViewerBasket, results.Ladder);
        yield return QuestionPart.Write(episode, bar);
        yield return ToolPart.Write(episode);
        yield return SponsorParts.Links(episode, _findings);
        yield return SponsorParts.Gifts(episode);
        yield return FramingParts.Earlier(results.Earlier);
        yield return CautionPart.Write(results);
        yield return FramingParts.Credits(episode, _template);
    }

    private DescriptionBlock Compose(Episode episode, PublishingLimits limits, ChapterList chapters)
    {
        var shortened = Fit();
        var sections = Sections();
        var text = string.Concat(sections.Select(section => section.Text));
        var (bytes, characters) = (TextLength.Bytes(text), TextLength.Characters(text));
        if (bytes > _limit)
            _findings.Add(DescriptionSentences.TooLong(bytes, characters, _limit));
        if (sections.FirstOrDefault(section => section.Text.Trim().Length > 0) is { Part: not DescriptionPart.Disclosure } && Current(DescriptionPart.Disclosure).Length > 0)
            _findings.Add(DescriptionSentences.DisclosureNotFirst());
        var title = TextLength.Characters(episode.Title);
        if (title > limits.TitleCharacters)
            _findings.Add(DescriptionSentences.TitleTooLong(episode.Title, title, limits.TitleCharacters));
        _findings.AddRange(ChapterLookalikes.Check(text, chapters));
        return new()
        {
            Text = text,
            Sections = sections,
            Shortened = shortened,
            NextToShorten = [.. Order().Where(part => CanShorten(part) && Current(part).Length > 0)],
            LimitBytes = _limit,
            Bytes = bytes,
            Characters = characters,
            Findings = _findings,
        };
    }

    // Two rounds: every part to its short form, in order, then every part out, in order; it stops as soon as the text fits.
    private List<(DescriptionPart Part, Shortening Shortening)> Fit()
    {
        var done = new List<(DescriptionPart, Shortening)>();
        foreach (var step in new[] { Shortening.Short, Shortening.LeftOut })
        {
            foreach (var part in Order().Where(CanShorten))
            {
                var before = TextLength.Bytes(string.Concat(Sections().Select(section => section.Text)));
                if (before <= _limit)
                    return done;
                var was = Current(part);
                if (was.Length == 0 || (step is Shortening.Short && (_parts[part].Short is not { Length: > 0 } shorter || shorter.Length >= was.Length)))
                    continue;
                _shortened[part] = step;
                done.Add((part, step));
                _findings.Add(DescriptionSentences.Shortened(part, step, _parts[part].ShortLoses, before, _limit));
            }
        }

        return done;
    }

    private IEnumerable<DescriptionPart> Order() => _template.ShortenFirst.Where(DescriptionTemplate.MayShorten).Distinct();

    private bool CanShorten(DescriptionPart part) => _shortened.GetValueOrDefault(part) is not Shortening.LeftOut;

    private string Current(DescriptionPart part) => _shortened.GetValueOrDefault(part) switch
    {
        Shortening.LeftOut => "",
        Shortening.Short => _parts[part].Short ?? "",
        _ => _parts[part].Full,
    };

    private List<DescriptionSection> Sections()
    {
        var sections = new List<DescriptionSection>();
        var own = new StringBuilder();
        foreach (var paragraph in _paragraphs)
        {
            var slots = paragraph.Where(piece => piece.Slot is not null).ToList();
            if (slots.Count > 0 && slots.TrueForAll(piece => Current(piece.Slot!.Value).Length == 0))
                continue;
            if (sections.Count > 0 || own.Length > 0)
                own.Append("\n\n");
            Add(paragraph);
        }

        if (own.Length > 0)
            sections.Add(new(null, own.ToString()));
        return sections;

        void Add(List<TemplatePiece> paragraph)
        {
            foreach (var (line, first) in LinesOf(paragraph))
            {
                // A line of slots alone that all came out empty leaves no gap.
                if (line.Any(piece => piece.Slot is not null) && line.All(piece => piece.Slot is { } part ? Current(part).Length == 0 : piece.Own.Trim().Length == 0))
                    continue;
                if (!first && !EndsInBreak())
                    own.Append('\n');
                foreach (var piece in line)
                {
                    if (piece.Slot is not { } slot)
                    {
                        own.Append(piece.Own);
                        continue;
                    }

                    if (Current(slot) is not { Length: > 0 } text)
                        continue;
                    if (own.Length > 0)
                        sections.Add(new(null, own.ToString()));
                    own.Clear();
                    sections.Add(new(slot, text, _shortened.GetValueOrDefault(slot)));
                }
            }
        }

        bool EndsInBreak() => own.Length > 0 ? own[^1] == '\n' : sections.Count == 0;
    }

    private static IEnumerable<(List<TemplatePiece> Line, bool First)> LinesOf(List<TemplatePiece> paragraph)
    {
        var line = new List<TemplatePiece>();
        var first = true;
        foreach (var piece in paragraph)
        {
            if (piece is { Slot: null, Own: "\n" })
            {
                yield return (line, first);
                line = [];
                first = false;
            }
            else
            {
                line.Add(piece);
            }
        }

        yield return (line, first);
    }
}
