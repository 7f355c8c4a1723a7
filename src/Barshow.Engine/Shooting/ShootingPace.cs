using Barshow.Engine.Specs;

namespace Barshow.Engine.Shooting;

/// <summary>How long the parts of a shoot day take, in whole minutes. Every figure is common practice, no source; the house edits them, and logged takes may correct them.</summary>
public sealed record ShootingPace
{
    /// <summary>The pace a house starts with.</summary>
    public static ShootingPace Default { get; } = new();

    /// <summary>One take of a drink that is built in its glass (usual range 4 to 8).</summary>
    public int BuiltMinutes { get; init; } = 6;

    /// <summary>One take of a stirred or thrown drink (5 to 10).</summary>
    public int StirredMinutes { get; init; } = 7;

    /// <summary>One take of a shaken drink (5 to 10).</summary>
    public int ShakenMinutes { get; init; } = 7;

    /// <summary>One take of a drink that is muddled or swizzled (6 to 12).</summary>
    public int MuddledMinutes { get; init; } = 8;

    /// <summary>One take of a blended drink (6 to 12), the sound rested.</summary>
    public int BlendedMinutes { get; init; } = 8;

    /// <summary>One take of a layered drink (8 to 20).</summary>
    public int LayeredMinutes { get; init; } = 12;

    /// <summary>Tasting and verdict, after the last take of a drink (2 to 5).</summary>
    public int TasteMinutes { get; init; } = 3;

    /// <summary>Pour and beauty close-ups of a drink (9 to 25 with lights as they stand).</summary>
    public int CloseUpMinutes { get; init; } = 12;

    /// <summary>Two drinks side by side, said and shown (3 to 6).</summary>
    public int ComparisonMinutes { get; init; } = 4;

    /// <summary>Reset after a take (4 to 10).</summary>
    public int ResetMinutes { get; init; } = 6;

    /// <summary>Added to a reset when the station changes (5 to 20).</summary>
    public int StationChangeMinutes { get; init; } = 10;

    /// <summary>Added to a reset when the backdrop changes (5 to 20).</summary>
    public int BackdropChangeMinutes { get; init; } = 10;

    /// <summary>Added to a reset when the method changes: other tools come to hand.</summary>
    public int MethodChangeMinutes { get; init; } = 2;

    /// <summary>Added to a reset when the glass changes: other marks on the bench.</summary>
    public int GlassChangeMinutes { get; init; } = 1;

    /// <summary>Added to a reset when the tools touched an allergen that the next drink does not hold.</summary>
    public int AllergenWashMinutes { get; init; } = 3;

    /// <summary>The introduction to camera (5 to 20).</summary>
    public int IntroMinutes { get; init; } = 10;

    /// <summary>The sponsor's read, two clean takes (5 to 15).</summary>
    public int SponsorReadMinutes { get; init; } = 10;

    /// <summary>Signing off (5 to 10).</summary>
    public int OutroMinutes { get; init; } = 5;

    /// <summary>A wash-up of six to eight glasses, dried and polished (10 to 20).</summary>
    public int WashUpMinutes { get; init; } = 15;

    /// <summary>How long a washed glass needs in the freezer (15 at least).</summary>
    public int RechillMinutes { get; init; } = 15;

    /// <summary>How long before its first take a glass goes into the freezer for frost that lasts.</summary>
    public int FrostMinutes { get; init; } = 120;

    /// <summary>A short break.</summary>
    public int BreakMinutes { get; init; } = 10;

    /// <summary>The longest stretch of work without a break.</summary>
    public int LongestStretchMinutes { get; init; } = 90;

    /// <summary>A meal.</summary>
    public int MealMinutes { get; init; } = 45;

    /// <summary>A meal begins no later than this after the call, when the day is longer than this.</summary>
    public int MealByMinutes { get; init; } = 300;

    /// <summary>What the presenter loses when another pair of hands makes a batch during the shoot.</summary>
    public int HandOverMinutes { get; init; } = 1;

    /// <summary>Preparation ends this long before the call, hands clean.</summary>
    public int HandsCleanMinutes { get; init; } = 15;

    /// <summary>Pressing one litre of citrus juice.</summary>
    public int JuiceMinutesPerLitre { get; init; } = 20;

    /// <summary>Twenty twists.</summary>
    public int TwentyTwistsMinutes { get; init; } = 10;

    /// <summary>Twenty wheels, wedges or slices.</summary>
    public int TwentyWheelsMinutes { get; init; } = 8;

    /// <summary>Polishing one glass.</summary>
    public int PolishGlassMinutes { get; init; } = 1;

    /// <summary>Rimming one glass.</summary>
    public int RimMinutes { get; init; } = 1;

    /// <summary>Laying one drink's tray and labelling it.</summary>
    public int TrayMinutes { get; init; } = 3;

    /// <summary>What is made beyond the need, as a share of it.</summary>
    public double SpareShare { get; init; } = 0.10;

    /// <summary>Grams of ice that one shaking or stirring takes (200 to 250).</summary>
    public int MixingIceGrams { get; init; } = 225;

    /// <summary>Ice beyond the need, as a share of it.</summary>
    public double IceSpareShare { get; init; } = 0.5;

    /// <summary>What the presenter tastes of a take, in millilitres: one sip of 10 to 15.</summary>
    public int SipMillilitres { get; init; } = 15;

    /// <summary>One take of a drink made so.</summary>
    public int TakeMinutes(MethodKind? method) => method switch
    {
        MethodKind.Stirred or MethodKind.Thrown => StirredMinutes,
        MethodKind.Shaken => ShakenMinutes,
        MethodKind.MuddledAndBuilt or MethodKind.MuddledAndShaken or MethodKind.Swizzled => MuddledMinutes,
        MethodKind.Blended => BlendedMinutes,
        MethodKind.Layered => LayeredMinutes,
        _ => BuiltMinutes,
    };
}
