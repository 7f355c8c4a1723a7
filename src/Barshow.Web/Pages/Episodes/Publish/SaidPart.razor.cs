using System.Globalization;
using Barshow.Engine.Callouts;
using Barshow.Engine.Callouts.Captions;
using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Specs;
using Barshow.Web.Drawing;
using Microsoft.AspNetCore.Components.Forms;

namespace Barshow.Web.Pages.Episodes.Publish;

/// <summary>State and handlers of the callout check.</summary>
public partial class SaidPart
{
    private string _heard = "", _pasted = "", _reason = "", _said = "";
    private string? _dismissing;

    /// <inheritdoc/>
    protected override void Look()
    {
        var report = Work.Said?.Report;
        _heard = report is null
            ? "no captions yet"
            : $"{Figures.Count(report.Callouts.Count(callout => callout is { Mention: false, Retracted: false }), "amount")} heard in {Figures.Count(report.Segments.Count, "segment")}, {Work.Said!.Open.Count.ToString(CultureInfo.InvariantCulture)} open";
    }

    private void Dismiss(string key) => (_dismissing, _reason) = (key, "");

    private async Task SettleAsync(string key, Settling how, string reason)
    {
        _dismissing = null;
        await Desk.ChangeAsync(episode => episode.WithSettled(key, new(key, how, reason.Trim())));
    }

    private async Task KeepAsync(string captions)
    {
        if (string.IsNullOrWhiteSpace(captions))
        {
            _said = "Paste the captions first, or read a file.";
            return;
        }

        if (captions.Length > EpisodeCheck.LongestCaptions)
        {
            _said = "These captions are longer than two million characters. Cut them to the film they belong to.";
            return;
        }

        _pasted = "";
        _said = "Checked. Undo at the top takes the captions out again.";
        await Desk.ChangeAsync(episode => episode with { Captions = captions });
    }

    private async Task ReadAsync(InputFileChangeEventArgs chosen)
    {
        if (chosen.File.Size > CaptionReader.MostBytes)
        {
            _said = "The file is larger than 10 MB. Captions of a film are smaller.";
            return;
        }

        try
        {
            await using var stream = chosen.File.OpenReadStream(CaptionReader.MostBytes);
            using var bytes = new MemoryStream();
            await stream.CopyToAsync(bytes);
            await KeepAsync(CaptionReader.Text(bytes.ToArray()));
        }
        catch (IOException problem)
        {
            _said = $"The file could not be read: {problem.Message}";
        }
    }

    // The film is right: what was said becomes the episode's amount, with its reason.
    private Func<Episode, Episode>? Change(Finding finding)
    {
        if (finding.Kind != FindingCatalogue.DiffersFromSpec)
            return null;
        var callout = Work.Said?.Report.Callouts.FirstOrDefault(heard => heard.TimeSeconds == finding.TimeSeconds && heard.Text == finding.Said && heard.Places.Count > 0);
        if ((callout?.Ounces ?? callout?.Metric ?? callout?.Counted) is not { Open: null } measure)
            return null;
        var place = callout!.Places.FirstOrDefault(at => Episode.Lineup[at.Drink].Name == finding.Drink, callout.Places[0]);
        return episode => episode.WithLine(place.Drink, place.Line, line => line.With(LayerFor(line), measure, $"as said on film: {finding.Said}") with { WrittenBeside = null });
    }

    // A layer above those that are there, so that it is the one that counts.
    private static AmountLayer LayerFor(SpecLine line) =>
        line.Amounts.Any(amount => amount.Layer is AmountLayer.Poured or AmountLayer.Published) ? AmountLayer.Poured : AmountLayer.Episode;

    private static string Standing(SaidCallout callout) => callout switch
    {
        { Retracted: true } => "taken back",
        { Mention: true } => "mention",
        { Repeat: true } => "said again",
        { Agrees: false } => "sides disagree",
        _ => "poured",
    };
}
