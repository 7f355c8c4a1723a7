using Barshow.Engine.Measures;
using Barshow.Engine.Specs;
using CsCheck;
using static Barshow.Engine.Tests.Specs.TestBar;
using Spec = Barshow.Engine.Specs.Spec;

namespace Barshow.Engine.Tests.Specs;

/// <summary>What holds for every drink, whatever is in it.</summary>
public class AnalysisPropertyTests
{
    private static readonly Gen<SpecLine> AnyLine = Gen.Select(
        Gen.OneOf([.. Shelf.All.Select(ingredient => ingredient.Name), "Sea fig cordial"]),
        Gen.Int[0, 240],
        Gen.OneOf(Unit.Millilitre, Unit.Ounce, Unit.Dash, Unit.Gram, Unit.Leaf, Unit.Part, Unit.Wedge, null),
        Gen.Enum<LineUse>(),
        Gen.OneOf<OpenMeasure?>(null, null, null, OpenMeasure.Top, OpenMeasure.Splash, OpenMeasure.ToTaste))
        .Select((name, amount, unit, use, open) => Line(
            open is { } left ? amount % 2 == 0 ? Measure.LeftOpen(left) : Measure.Of(new(amount, 4), unit).As(left) : Measure.Of(new(amount, 4), unit), name, use));

    private static readonly Gen<Spec> AnyDrink = Gen.Select(
        AnyLine.Array[0, 10],
        Gen.OneOf<MethodKind?>([null, .. Enum.GetValues<MethodKind>().Select(kind => (MethodKind?)kind)]),
        Gen.OneOf([.. Kit.Glasses.Select(glass => glass.Name), "", "Tiki mug"]),
        Gen.Enum<IceKind>())
        .Select((lines, method, glass, ice) => Drink(method, glass, lines).On(ice));

    [Fact]
    public void Strength_stays_between_0_and_1() => AnyDrink.Sample(drink =>
    {
        var analysis = drink.Analyse();

        Assert.InRange(analysis.StartStrength, 0, 1);
        Assert.InRange(analysis.ServedStrength.Low, 0, 1);
        Assert.InRange(analysis.ServedStrength.High, 0, 1);
    });

    [Fact]
    public void Dilution_keeps_ethanol_sugar_and_acid() => AnyDrink.Sample(drink =>
    {
        var lines = drink.Lines.Where(line => line.Planned?.Open is not OpenMeasure.Top).ToArray();
        var analysis = (drink with { Lines = lines }).Analyse();

        // An open top is poured to the line, so only lines with amounts are compared.
        if (analysis.Lines.Any(line => line.IsOpenTop))
            return;
        Assert.Equal(analysis.Lines.Sum(line => line.EthanolMillilitres), analysis.EthanolMillilitres, 1e-9);
        Assert.Equal(analysis.Lines.Sum(line => line.SugarGrams), analysis.SugarGrams, 1e-9);
        Assert.Equal(analysis.Lines.Sum(line => line.AcidGrams), analysis.AcidGrams, 1e-9);
        Assert.Equal(analysis.EthanolMillilitres, analysis.ServedStrength.Low * analysis.ServedMillilitres.High, 1e-6);
        Assert.Equal(analysis.SugarGrams, analysis.SugarGramsPer100Millilitres.Low * analysis.ServedMillilitres.High / 100, 1e-6);
    });

    [Fact]
    public void Nothing_weighs_less_than_nothing() => AnyDrink.Sample(drink =>
    {
        var analysis = drink.Analyse();

        Assert.True(analysis.WaterMillilitres.Low >= 0);
        Assert.True(analysis.ToppedMillilitres.Low >= 0);
        Assert.True(analysis.ServedMillilitres.Low >= analysis.TinMillilitres);
        Assert.All(analysis.Findings, finding => Assert.Equal(drink.Name, finding.Drink));
    });

    [Fact]
    public void A_double_pour_is_as_strong_and_twice_as_much() => AnyDrink.Sample(drink =>
    {
        var twice = drink with { Lines = [.. drink.Lines.Select(line => line with { Amounts = [.. line.Amounts.Select(amount => amount with { Measure = amount.Measure.Times(2) })] })] };
        var (once, doubled) = (WithoutHabits(drink).Analyse(), WithoutHabits(twice).Analyse());

        Assert.Equal(once.TinMillilitres * 2, doubled.TinMillilitres, 1e-6);
        Assert.Equal(once.StartStrength, doubled.StartStrength, 1e-9);
    });

    // A splash and a rinse have sizes of their own, which doubling leaves as they are.
    private static Spec WithoutHabits(Spec drink) => drink with { Lines = [.. drink.Lines.Where(line => line.Planned?.Open is null && line.Use is not LineUse.Rinsed)] };
}
