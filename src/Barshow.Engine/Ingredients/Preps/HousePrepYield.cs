using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients.Solutions;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;

namespace Barshow.Engine.Ingredients.Preps;

/// <summary>What one batch of a house prep gives, and what is in it.</summary>
public sealed record HousePrepYield
{
    /// <summary>Millilitres of one batch, above 0; null when no volume is stated or can be made of its inputs.</summary>
    public double? Millilitres { get; init; }

    /// <summary>Whether the prep states its yield; otherwise it is computed from the inputs.</summary>
    public bool IsStated { get; init; }

    /// <summary>What the inputs alone would fill, in millilitres: all liquid, and sugar and salt dissolved in it; 0 when nothing in it flows.</summary>
    public double ComputedMillilitres { get; init; }

    /// <summary>What is in it: as the ingredient states, and what it leaves open as computed from the inputs.</summary>
    public Composition Composition { get; init; } = new();

    /// <summary>What there is to say: a prep made from itself, inputs the house does not know, a stated yield its inputs cannot give.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>The yield of one batch.</summary>
    /// <param name="prep">A house prep; another ingredient yields nothing.</param>
    /// <param name="shelf">The ingredients its inputs are found on.</param>
    /// <param name="convention">How ounces and millilitres are matched.</param>
    /// <param name="sizes">What dash, barspoon, splash and drop hold.</param>
    public static HousePrepYield Of(Ingredient prep, IngredientShelf shelf, Convention convention = Convention.Bar, BarSizes? sizes = null)
    {
        ArgumentNullException.ThrowIfNull(prep);
        ArgumentNullException.ThrowIfNull(shelf);
        return new PrepReckoning(shelf, convention, sizes ?? BarSizes.Default).Of(prep, []);
    }
}

/// <summary>One reckoning of a prep with all that it is made from.</summary>
internal sealed class PrepReckoning(IngredientShelf shelf, Convention convention, BarSizes sizes)
{
    private const int Deepest = 12;

    // A stated yield that lies so far above what goes in is a slip; far below it may be what the pan and the sieve keep.
    private const double MostAbove = 1.1;

    public HousePrepYield Of(Ingredient ingredient, IReadOnlyList<Ingredient> path)
    {
        if (ingredient.Prep is not { } prep)
            return new() { Composition = ingredient.Composition };
        if (path.Any(each => each.Slug == ingredient.Slug) || path.Count >= Deepest)
            return new() { Composition = ingredient.Composition, Findings = [PrepSentences.InItself([.. path, ingredient])] };

        var batch = new Batch();
        var findings = new List<Finding>();
        foreach (var input in prep.Inputs)
            Add(input, ingredient, [.. path, ingredient], batch, findings);

        var computed = batch.Millilitres;
        var stated = StatedMillilitres(prep, ingredient);
        if (stated > computed * MostAbove && computed > 0 && batch.AllCounted)
            findings.Add(PrepSentences.YieldAboveInputs(ingredient, stated.Value, computed));
        var yield = stated ?? (computed > 0 ? computed : null);
        return new()
        {
            Millilitres = yield,
            IsStated = stated is not null,
            ComputedMillilitres = computed,
            Composition = yield is { } millilitres ? Filled(ingredient, batch, millilitres) : ingredient.Composition,
            Findings = findings,
        };
    }

    private void Add(PrepInput input, Ingredient prep, IReadOnlyList<Ingredient> path, Batch batch, List<Finding> findings)
    {
        if (!shelf.TryGet(input.Ingredient, out var ingredient))
        {
            batch.AllCounted = false;
            findings.Add(PrepSentences.InputUnknown(prep, input));
            return;
        }

        var composition = ingredient.Composition;
        if (ingredient.Prep is not null)
        {
            var inner = Of(ingredient, path);
            findings.AddRange(inner.Findings);
            composition = inner.Composition;
        }

        if (GramsOf(input.Amount, ingredient) is { } grams && ingredient.Kind is IngredientKind.Sugar or IngredientKind.Salt && ingredient.Prep is null)
            batch.AddSolid(ingredient.Kind, grams);
        else if (MillilitresOf(input.Amount, ingredient, composition) is { } millilitres)
            batch.AddLiquid(millilitres, composition);
        else
            batch.AllCounted &= ingredient.Kind is IngredientKind.Herb or IngredientKind.Spice;
    }

    private double? StatedMillilitres(HousePrep prep, Ingredient ingredient) => prep.Yield switch
    {
        null => null,
        var yield when yield.InMillilitres(convention, sizes) is { Sign: > 0 } volume => volume.ToDouble(),
        var yield when yield.Unit?.Grams is { } grams && ingredient.Composition.DensityGramsPerMillilitre is > 0 and var density => (yield.Middle!.Value * grams).ToDouble() / density,
        _ => null,
    };

    private double? GramsOf(Measure amount, Ingredient ingredient)
    {
        if (amount.Middle is not { } middle)
            return null;
        if (amount.Unit?.Grams is { } each)
            return (middle * each).ToDouble();
        return amount.MillilitresNear(convention, sizes) * (ingredient.Composition.DensityGramsPerMillilitre ?? SugarSolution.GranulatedGramsPerMillilitre);
    }

    private double? MillilitresOf(Measure amount, Ingredient ingredient, Composition composition)
    {
        if (!Flows(ingredient.Kind) || ingredient.Slug == Ice)
            return null;
        if (amount.Unit == Unit.Dash && ingredient.DashMillilitres is { } dash)
            return (amount.Middle!.Value * dash).ToDouble();
        if (amount.InMillilitres(convention, sizes) is { } volume)
            return volume.ToDouble();
        if (amount.Unit?.Grams is { } grams)
            return (amount.Middle!.Value * grams).ToDouble() / DensityOf(ingredient, composition);
        return amount.Unit is null or { Kind: UnitKind.Count } && amount.Middle is { } count && ingredient.Kind is IngredientKind.Egg && ingredient.Produce is { JuiceMillilitres: > 0 } egg
            ? count.ToDouble() * egg.JuiceMillilitres
            : null;
    }

    private static double DensityOf(Ingredient ingredient, Composition composition) =>
        composition.DensityGramsPerMillilitre is > 0 and var density ? density
        : ingredient.Kind is IngredientKind.Water ? Water.KilogramsPerCubicMetre(20) / 1000
        : 1;

    // Ice chills a batch and stays out of it.
    private static readonly Slug Ice = Slug.Of("ice");

    private static bool Flows(IngredientKind kind) => kind is not
        (IngredientKind.Fruit or IngredientKind.Vegetable or IngredientKind.Herb or IngredientKind.Spice or IngredientKind.Preserve or IngredientKind.Sugar or IngredientKind.Other);

    private static Composition Filled(Ingredient ingredient, Batch batch, double millilitres)
    {
        var stated = ingredient.Composition;
        return stated with
        {
            Strength = stated.Strength ?? Strength.FromPercent(Math.Clamp(batch.EthanolMillilitres / millilitres * 100, 0, 100)),
            SugarGramsPer100Millilitres = stated.SugarGramsPer100Millilitres ?? batch.SugarGrams / millilitres * 100,
            AcidGramsPer100Millilitres = stated.AcidGramsPer100Millilitres ?? batch.AcidGrams / millilitres * 100,
            Source = stated.Source.Length > 0 ? stated.Source : "computed from its inputs",
        };
    }

    /// <summary>What has gone into a pan.</summary>
    private sealed class Batch
    {
        private double _liquidMillilitres;
        private double _drySugarGrams;
        private double _saltGrams;

        public double EthanolMillilitres { get; private set; }

        public double SugarGrams { get; private set; }

        public double AcidGrams { get; private set; }

        /// <summary>Whether every input was counted by volume or adds none.</summary>
        public bool AllCounted { get; set; } = true;

        public double Millilitres => _liquidMillilitres <= 0 ? 0 : Saline.YieldMillilitres(_saltGrams, _liquidMillilitres) + DissolvedMillilitres();

        public void AddSolid(IngredientKind kind, double grams)
        {
            if (kind is IngredientKind.Salt)
            {
                _saltGrams += grams;
                return;
            }

            _drySugarGrams += grams;
            SugarGrams += grams;
        }

        public void AddLiquid(double millilitres, Composition composition)
        {
            _liquidMillilitres += millilitres;
            EthanolMillilitres += millilitres * (composition.Strength?.Share ?? 0);
            SugarGrams += millilitres * (composition.SugarGramsPer100Millilitres ?? 0) / 100;
            AcidGrams += millilitres * (composition.AcidGramsPer100Millilitres ?? 0) / 100;
        }

        // Any liquid is taken as water for what the sugar adds: exact for syrups, within 1 % of the batch for juices and spirits.
        private double DissolvedMillilitres()
        {
            var water = _liquidMillilitres * Water.KilogramsPerCubicMetre(20) / 1000;
            var share = Math.Min(0.85, _drySugarGrams / (_drySugarGrams + water));
            var dissolved = share < 0.85 ? _drySugarGrams : water * 0.85 / 0.15;
            return (dissolved + water) / (Sucrose.KilogramsPerCubicMetre(share, 20) / 1000) - _liquidMillilitres;
        }
    }
}
