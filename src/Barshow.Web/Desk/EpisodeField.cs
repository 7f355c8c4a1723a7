using System.Globalization;
using Barshow.Engine.Episodes;
using Barshow.Engine.Measures.Writing;
using Barshow.Engine.Specs;

namespace Barshow.Web.Desk;

/// <summary>A part of an episode in which two states of it differ.</summary>
/// <param name="Name">What part.</param>
/// <param name="Mine">As it stands here, in words.</param>
/// <param name="Theirs">As it is saved, in words.</param>
/// <param name="Take">Puts the part of the second episode into the first.</param>
public sealed record EpisodeField(string Name, string Mine, string Theirs, Func<Episode, Episode, Episode> Take)
{
    private static readonly (string Name, Func<Episode, string> Show, Func<Episode, Episode, Episode> Take)[] Parts =
    [
        ("Title", episode => episode.Title, (into, from) => into with { Title = from.Title }),
        ("Theme", episode => episode.Theme, (into, from) => into with { Theme = from.Theme }),
        ("Number", episode => Text(episode.Number), (into, from) => into with { Number = from.Number }),
        ("Bottle", episode => Bottle(episode.Bottle), (into, from) => into with { Bottle = from.Bottle }),
        ("Shoot", episode => $"{Text(episode.ShootDate)} {Text(episode.CallTime)}".Trim(), (into, from) => into with { ShootDate = from.ShootDate, CallTime = from.CallTime, TimeZone = from.TimeZone }),
        ("Publish date", episode => Text(episode.PublishDate), (into, from) => into with { PublishDate = from.PublishDate }),
        ("Takes", episode => Text(episode.Takes), (into, from) => into with { Takes = from.Takes }),
        ("Ounces and millilitres", episode => episode.Convention.ToString(), (into, from) => into with { Convention = from.Convention }),
        ("Sponsor", episode => Sponsor(episode.Sponsor), (into, from) => into with { Sponsor = from.Sponsor }),
        ("Gifts", episode => string.Join("; ", episode.Gifts), (into, from) => into with { Gifts = from.Gifts }),
        ("Links", episode => string.Join("; ", episode.Links.Select(link => $"{link.Label} {link.Address}")), (into, from) => into with { Links = from.Links }),
        ("Shoot order", episode => string.Join(", ", episode.ShootOrder), (into, from) => into with { ShootOrder = from.ShootOrder }),
        ("Film length", episode => Text(episode.FilmLengthSeconds), (into, from) => into with { FilmLengthSeconds = from.FilmLengthSeconds }),
        ("Done in the mise list", episode => string.Join(", ", episode.Ticked.Order(StringComparer.Ordinal)), (into, from) => into with { Ticked = from.Ticked }),
    ];

    /// <summary>Every part in which two states differ; the lineup drink by drink where both hold the same drinks in the same order.</summary>
    public static IReadOnlyList<EpisodeField> Between(Episode mine, Episode theirs)
    {
        ArgumentNullException.ThrowIfNull(mine);
        ArgumentNullException.ThrowIfNull(theirs);
        var fields = Parts
            .Where(part => part.Show(mine) != part.Show(theirs))
            .Select(part => new EpisodeField(part.Name, part.Show(mine), part.Show(theirs), part.Take))
            .ToList();
        if (mine.Lineup.Select(drink => drink.Spec.Slug).SequenceEqual(theirs.Lineup.Select(drink => drink.Spec.Slug)))
            fields.AddRange(mine.Lineup.Index()
                .Where(each => Drink(each.Item) != Drink(theirs.Lineup[each.Index]))
                .Select(each => new EpisodeField(each.Item.Name, Drink(each.Item), Drink(theirs.Lineup[each.Index]), (into, from) => into.WithDrink(each.Index, _ => from.Lineup[each.Index]))));
        else
            fields.Add(new("Lineup", string.Join(", ", mine.Lineup.Select(drink => drink.Name)), string.Join(", ", theirs.Lineup.Select(drink => drink.Name)), (into, from) => into with { Lineup = from.Lineup }));
        return fields;
    }

    private static string Text(IFormattable? value) => value?.ToString(null, CultureInfo.InvariantCulture) ?? "";

    private static string Bottle(FeaturedBottle? bottle) =>
        bottle is null ? "" : string.Create(CultureInfo.InvariantCulture, $"{bottle.Name}, {bottle.Millilitres} ml, {bottle.Strength?.Percent} %");

    private static string Sponsor(SponsorBrief sponsor) =>
        string.Join("; ", new[] { sponsor.Sponsor, sponsor.Disclosure, Text(sponsor.DisclosureBySeconds), string.Join(", ", sponsor.MustSay), string.Join(", ", sponsor.Avoid), sponsor.Approval.ToString() });

    private static string Drink(LineupDrink drink) => string.Create(CultureInfo.InvariantCulture,
        $"{string.Join("; ", drink.Spec.Lines.Select(Line))}. {drink.Spec.Method?.Name}, {drink.Spec.Serve.Glass}, {drink.Spec.Garnish?.Text}. Takes {drink.Takes}, swap-outs {drink.TastedSwapOuts} and {drink.UntastedSwapOuts}, {drink.Pin}, film {drink.FilmSeconds}");

    private static string Line(SpecLine line) =>
        line.Planned is { } measure ? $"{MeasureWriter.Show(measure)} {line.Name}" : line.Name;
}
