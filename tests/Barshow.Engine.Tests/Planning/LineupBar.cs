using Barshow.Engine.Episodes;
using Barshow.Engine.Planning.Lineup;
using Barshow.Engine.Specs;
using static Barshow.Engine.Tests.Planning.PlanningBar;

namespace Barshow.Engine.Tests.Planning;

/// <summary>A small catalogue with fair defaults: every drink pours white rum.</summary>
internal static class LineupBar
{
    public static Spec Made(string name, string family, MethodKind method, string glass, string[] tags, params (string Measure, string Slug)[] lines) =>
        Drink(name, [("50 ml", "white-rum"), .. lines]) with
        {
            Family = family,
            Method = new(method),
            Serve = new() { Glass = S(glass) },
            Tags = tags,
        };

    public static Spec RumSour { get; } = Made("Rum sour", "sour", MethodKind.Shaken, "coupe", ["fresh"], ("25 ml", "lime-juice"), ("20 ml", "sugar-syrup"));

    public static Spec MintSour { get; } = Made("Mint sour", "sour", MethodKind.Shaken, "coupe", ["herbal"], ("25 ml", "lime-juice"), ("20 ml", "mint-syrup"));

    public static Spec LongRum { get; } = Made("Long rum", "highball", MethodKind.Built, "highball", ["fresh"], ("120 ml", "soda-water"));

    public static Spec BitterRum { get; } = Made("Bitter rum", "spirit-forward", MethodKind.Stirred, "rocks", ["bitter"], ("3 dash", "aromatic-bitters"), ("5 ml", "sugar-syrup"));

    public static Spec Muddled { get; } = Made("Muddled rum", "smash", MethodKind.MuddledAndBuilt, "highball", ["herbal", "fresh"], ("8 leaf", "mint"), ("25 ml", "lime-juice"), ("60 ml", "soda-water"));

    public static Spec Blended { get; } = Made("Blended rum", "sour", MethodKind.Blended, "coupe", ["fresh"], ("30 ml", "lime-juice"), ("30 ml", "sugar-syrup"));

    public static Spec Cooler { get; } = Drink("Lime cooler", ("30 ml", "lime-juice"), ("30 ml", "sugar-syrup"), ("120 ml", "soda-water")) with { Family = "cooler", Method = new(MethodKind.Built), Serve = new() { Glass = S("highball") }, Tags = ["fresh"] };

    public static IReadOnlyList<Spec> Catalogue { get; } = [RumSour, MintSour, LongRum, BitterRum, Muddled, Blended, Cooler];

    public static LineupQuestion Question(params Spec[] catalogue) => new()
    {
        Bar = Of() with
        {
            Kit = new BarKit
            {
                Glasses = [.. new[] { "coupe", "highball", "rocks" }.Select(name => new Glass { Slug = S(name), Name = name, BrimfulMillilitres = 200, Count = 6 })],
                Tools = [new(S("shaking-tins"), "Tins"), new(S("mixing-glass"), "Mixing glass"), new(S("muddler"), "Muddler"), new(S("blender"), "Blender")],
            },
        },
        Catalogue = catalogue.Length > 0 ? catalogue : Catalogue,
        Count = 3,
        Bottle = new FeaturedBottle { Name = "White rum", Ingredient = S("white-rum"), Millilitres = 700 },
    };

    public static string Drinks(LineupPlan plan) => string.Join(", ", plan.Picks.Select(pick => pick.Spec.Name));
}
