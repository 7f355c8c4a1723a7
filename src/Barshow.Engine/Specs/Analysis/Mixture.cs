namespace Barshow.Engine.Specs.Analysis;

/// <summary>Liquids poured together; volumes add up.</summary>
internal readonly record struct Mixture(double Millilitres, double EthanolMillilitres, double SugarGrams, double AcidGrams)
{
    /// <summary>Alcohol by volume, 0 to 1; 0 for nothing.</summary>
    public double Strength => Millilitres > 0 ? Math.Clamp(EthanolMillilitres / Millilitres, 0, 1) : 0;

    public double SugarPer100 => Millilitres > 0 ? SugarGrams / Millilitres * 100 : 0;

    public double AcidPer100 => Millilitres > 0 ? AcidGrams / Millilitres * 100 : 0;

    public static Mixture Of(IEnumerable<LineContent> lines)
    {
        var sum = default(Mixture);
        foreach (var line in lines)
            sum += new Mixture(line.Millilitres, line.EthanolMillilitres, line.SugarGrams, line.AcidGrams);
        return sum;
    }

    /// <summary>One millilitre of open tops in equal shares; nothing where there are none.</summary>
    public static Mixture OfOne(IEnumerable<LineContent> openTops)
    {
        var tops = openTops.ToArray();
        return tops.Length == 0
            ? default
            : new(1, tops.Average(line => line.StrengthShare), tops.Average(line => line.SugarPerMillilitre), tops.Average(line => line.AcidPerMillilitre));
    }

    public static Mixture Water(double millilitres) => new(millilitres, 0, 0, 0);

    public static Mixture operator +(Mixture left, Mixture right) => new(
        left.Millilitres + right.Millilitres,
        left.EthanolMillilitres + right.EthanolMillilitres,
        left.SugarGrams + right.SugarGrams,
        left.AcidGrams + right.AcidGrams);

    public static Mixture operator *(Mixture each, double times) =>
        new(each.Millilitres * times, each.EthanolMillilitres * times, each.SugarGrams * times, each.AcidGrams * times);
}
