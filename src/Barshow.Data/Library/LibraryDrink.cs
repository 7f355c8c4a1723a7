using Barshow.Data.Stores;
using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Analysis;

namespace Barshow.Data.Library;

/// <summary>A drink of the library with what the list shows beside it.</summary>
public sealed class LibraryDrink
{
    private readonly Lazy<DrinkAnalysis> _analysis;
    private readonly Lazy<Ingredient?> _base;
    private readonly Lazy<IReadOnlyList<string>> _missing;

    internal LibraryDrink(Stored<Spec> stored, string folded, Bar bar)
        : this(stored, folded, bar, new(() => DrinkAnalyser.Analyse(stored.Value, SettingOf(bar))))
    {
    }

    private LibraryDrink(Stored<Spec> stored, string folded, Bar bar, Lazy<DrinkAnalysis> analysis)
    {
        Stored = stored;
        Folded = folded;
        _analysis = analysis;
        _base = new(() => BaseOf(stored.Value, bar.Ingredients));
        _missing = new(() => OnHand.Missing(stored.Value, bar.Ingredients));
    }

    /// <summary>The spec as it is saved.</summary>
    public Stored<Spec> Stored { get; }

    /// <summary>The spec.</summary>
    public Spec Spec => Stored.Value;

    /// <summary>What the drink comes to, by the house's convention and sizes.</summary>
    public DrinkAnalysis Analysis => _analysis.Value;

    /// <summary>The spirit it is built on: its first spirit, else the first line with alcohol; null when it has none.</summary>
    public Ingredient? Base => _base.Value;

    /// <summary>The ingredients, as the spec names them, that are neither on hand nor staples nor made of such; what may be left out is not among them.</summary>
    public IReadOnlyList<string> Missing => _missing.Value;

    /// <summary>Strength as served, in percent; the middle of its range.</summary>
    public double StrengthPercent => Analysis.ServedStrength.Middle * 100;

    internal string Folded { get; }

    /// <summary>The same drink in another state of the bar; what is reckoned of it already is kept where the change does not touch it.</summary>
    internal LibraryDrink Under(Bar bar, BarChange change) => change.Touches(Spec) ? new(Stored, Folded, bar) : new(Stored, Folded, bar, _analysis);

    private static AnalysisSetting SettingOf(Bar bar) => new(bar.Ingredients, bar.Kit) { Convention = bar.House.Convention, Sizes = bar.House.BarSizes };

    private static Ingredient? BaseOf(Spec spec, IngredientShelf shelf)
    {
        var known = spec.Lines.Select(line => shelf[line.Ingredient]).OfType<Ingredient>().ToList();
        return known.FirstOrDefault(each => each.Kind == IngredientKind.Spirit)
            ?? known.FirstOrDefault(each => each.Composition.Strength?.Share > 0 && each.Kind != IngredientKind.Bitters);
    }
}
