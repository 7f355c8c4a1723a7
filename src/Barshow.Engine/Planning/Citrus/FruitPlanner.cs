using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Planning.Citrus;

/// <summary>Finds the fewest whole fruit that give juice, peel, wedges and wheels at once, exactly.</summary>
/// <remarks>
/// A fruit is used by halves. A half is pressed, its peel cut before, or it is cut in wedges, wheels or slices and gives no juice.
/// Half a fruit gives half the juice and half its cuts, rounded down; a fruit used whole for one cut gives the whole number.
/// Two halves of one use that lie in two fruit can always be put together in one at no loss, so at most one lone half of each use
/// need be tried: every choice of lone halves is tried, and for each the whole fruit follow.
/// </remarks>
public static class FruitPlanner
{
    // No order is larger, whatever a spec says.
    private const int MostPieces = 10_000_000;

    /// <summary>The plan for one fruit.</summary>
    /// <param name="fruit">A fruit with its produce figures; without them one of everything is assumed.</param>
    /// <param name="need">What is asked of it; amounts below nought count as nought.</param>
    public static FruitPlan Plan(Ingredient fruit, FruitNeed need)
    {
        ArgumentNullException.ThrowIfNull(fruit);
        ArgumentNullException.ThrowIfNull(need);
        var findings = new List<Finding>();
        var uses = need.Cuts.Where(cut => cut.Value > Quantity.Least)
            .OrderBy(cut => cut.Key)
            .Select(cut => Use(fruit, cut.Key.Cut, cut.Value, findings))
            .ToList();
        var juiceEach = Math.Max(0, fruit.Produce?.JuiceMillilitres ?? 0);
        var halvesForJuice = juiceEach > 0 ? Halves(need.JuiceMillilitres, juiceEach) : 0;
        var pressedHalves = Math.Max(halvesForJuice, Math.Max(0, need.Shells));
        var best = Choose(uses, pressedHalves);
        return new FruitPlan(fruit, need, best.Fruit, Pair(uses, best))
        {
            Findings = findings,
            SpareJuiceMillilitres = Math.Max(0, best.Pressed * juiceEach / 2 - Math.Max(0, need.JuiceMillilitres)),
        };
    }

    private readonly record struct CutUse(Unit? Cut, int Pieces, int PerFruit, int PerHalf, bool Pressed);

    private readonly record struct Choice(int Fruit, int Pressed, int PlainHalves, IReadOnlyList<int> Whole, int LoneMask);

    private static CutUse Use(Ingredient fruit, Unit? cut, double pieces, List<Finding> findings)
    {
        // Whole fruit are counted in halves, so that half a lime is half a lime.
        if (cut is null)
            return new(null, Whole(pieces * 2), 2, 1, false);
        var known = fruit.Produce?.Cuts.FirstOrDefault(candidate => candidate.Cut == cut && candidate.PerPiece > 0);
        var perPiece = known?.PerPiece ?? Practice.CutsPerFruit(cut);
        if (known is null)
            findings.Add(PlanningFindings.CutYieldAssumed(fruit, cut, perPiece));
        return new(cut, Whole(pieces), perPiece, perPiece / 2, known?.SparesJuice ?? cut == Unit.Twist);
    }

    private static Choice Choose(IReadOnlyList<CutUse> uses, int pressedHalves)
    {
        var best = default(Choice?);
        for (var mask = 0; mask < 1 << uses.Count; mask++)
        {
            if (With(uses, mask, pressedHalves) is { } choice && (best is null || choice.Fruit < best.Value.Fruit))
                best = choice;
        }

        return best!.Value;
    }

    // The whole fruit that follow when exactly the uses in the mask take one lone half; null when a half gives nothing of its use.
    private static Choice? With(IReadOnlyList<CutUse> uses, int mask, int pressedHalves)
    {
        var whole = new int[uses.Count];
        var (halves, pressed) = (0, 0);
        for (var i = 0; i < uses.Count; i++)
        {
            var lone = (mask >> i) & 1;
            if (lone == 1 && uses[i].PerHalf == 0)
                return null;
            whole[i] = Covering(uses[i].Pieces - lone * uses[i].PerHalf, uses[i].PerFruit);
            halves += 2 * whole[i] + lone;
            pressed += uses[i].Pressed ? 2 * whole[i] + lone : 0;
        }

        var plain = Math.Max(0, pressedHalves - pressed);
        plain += (halves + plain) & 1;
        return new((halves + plain) / 2, pressed + plain, plain, whole, mask);
    }

    // Lone halves are put together two by two; a half left over is pressed.
    private static List<FruitUse> Pair(IReadOnlyList<CutUse> uses, Choice choice)
    {
        var result = new List<FruitUse>();
        var lone = new List<HalfUse>();
        for (var i = 0; i < uses.Count; i++)
        {
            var half = new HalfUse(uses[i].Pressed, uses[i].Cut);
            if (choice.Whole[i] > 0)
                result.Add(new(choice.Whole[i], [half, half]));
            if (((choice.LoneMask >> i) & 1) == 1)
                lone.Add(half);
        }

        var press = new HalfUse(true, null);
        var plain = choice.PlainHalves;
        if (lone.Count % 2 == 1)
        {
            lone.Add(press);
            plain--;
        }

        for (var i = 0; i < lone.Count; i += 2)
            result.Add(new(1, [lone[i], lone[i + 1]]));
        if (plain > 0)
            result.Add(new(plain / 2, [press, press]));
        return result;
    }

    private static int Covering(int pieces, int perFruit) => pieces <= 0 ? 0 : (pieces + perFruit - 1) / perFruit;

    private static int Halves(double juice, double juiceEach) => (int)Math.Clamp(Math.Ceiling((juice - Quantity.Least) * 2 / juiceEach), 0, MostPieces);

    private static int Whole(double amount) => (int)Math.Clamp(Math.Ceiling(amount - Quantity.Least), 0, MostPieces);
}
