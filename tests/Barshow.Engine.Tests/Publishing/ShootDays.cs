using Barshow.Engine.Episodes;
using Barshow.Engine.Names;
using Barshow.Engine.Publishing;
using Barshow.Engine.Shooting;
using Barshow.Engine.Shooting.Mise;
using Barshow.Engine.Shooting.Order;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Tests.Publishing;

/// <summary>A shoot day by hand, for the tests of what the crew gets.</summary>
internal static class ShootDays
{
    public static ShootClock Clock { get; } = new(new DateOnly(2027, 3, 6), new TimeOnly(10, 0));

    public static RunningOrder Order { get; } = new()
    {
        Clock = Clock,
        ShootOrder = [SaltLane.HarbourSour.Spec.Slug, SaltLane.Dune.Spec.Slug],
        Blocks =
        [
            Block(BlockKind.Intro, "Introduction", 0, 5),
            Take(SaltLane.HarbourSour, 1, 5, 12, "coupe"),
            new() { Kind = BlockKind.Reset, Name = "Reset", Drink = SaltLane.HarbourSour.Spec.Slug, Start = Minutes(12), End = Minutes(16) },
            Take(SaltLane.HarbourSour, 2, 16, 22, "coupe"),
            Block(BlockKind.Break, "Break", 22, 32),
            Take(SaltLane.Dune, 1, 32, 40, "highball"),
            Block(BlockKind.WashUp, "Wash-up", 40, 55),
        ],
    };

    public static MiseList Mise { get; } = new()
    {
        Clock = Clock,
        Tasks =
        [
            new()
            {
                Key = "prep:rich-syrup", Text = "Make rich syrup.", Steps = ["Measure 200 g sugar, 100 g water.", "Stir until clear."], Station = "Kitchen", Amount = "225 ml · 7½ oz",
                Duration = Minutes(10), NotBefore = Minutes(-1500), NotAfter = Minutes(-840), Start = Minutes(-860), End = Minutes(-850), Session = MiseSession.DayBefore, For = [SaltLane.HarbourSour.Spec.Slug],
                Reason = "It keeps.",
            },
            new()
            {
                Key = "juice:lime-juice", Text = "Press lime juice and strain it.", Station = "Press", Amount = "120 ml · 4 oz from 4 limes", Equipment = "citrus press",
                Duration = Minutes(12), NotBefore = Minutes(-240), NotAfter = Minutes(-5), Start = Minutes(-30), End = Minutes(-18), For = [SaltLane.HarbourSour.Spec.Slug, SaltLane.Dune.Spec.Slug],
            },
            new() { Key = "rim:dune", Text = "Chill the highballs.", Station = "Glass bench", Duration = Minutes(5), NotBefore = Minutes(0), NotAfter = Minutes(30), Start = Minutes(24), End = Minutes(29), Session = MiseSession.DuringTheShoot },
        ],
    };

    public static Episode Episode { get; } = SaltLane.Filmed with
    {
        ShootDate = new(2027, 3, 6),
        CallTime = new(10, 0),
        Takes = 2,
        Bottle = new() { Name = "white rum", Millilitres = 700 },
        Sponsor = new() { Sponsor = "a rum maker", Disclosure = "Ad: paid for by a rum maker.", DisclosureBySeconds = 30, MustSay = ["made in a pot still"], Avoid = ["smooth", "cheap"], Approval = Approval.Waiting },
        Ticked = ["prep:rich-syrup"],
    };

    public static EpisodeResults Results(Episode? episode = null) => SaltLane.Results(episode ?? Episode) with { Order = Order, Mise = Mise };

    private static TimeSpan Minutes(int minutes) => TimeSpan.FromMinutes(minutes);

    private static Block Block(BlockKind kind, string name, int start, int end) => new() { Kind = kind, Name = name, Start = Minutes(start), End = Minutes(end) };

    private static Block Take(LineupDrink drink, int take, int start, int end, string glass) => Block(BlockKind.Take, $"Take {take} of {drink.Name}", start, end) with
    {
        Drink = drink.Spec.Slug,
        Take = take,
        SetUp = new("Bench", MethodKind.Shaken, Slug.Of(glass), ""),
        Reason = "Light to strong",
    };
}
