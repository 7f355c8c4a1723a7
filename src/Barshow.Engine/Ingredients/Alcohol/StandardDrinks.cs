namespace Barshow.Engine.Ingredients.Alcohol;

/// <summary>How many standard drinks an amount of ethanol is, by each country's own definition. It says nothing of who may drive or drink.</summary>
/// <param name="EthanolMillilitres">Millilitres of ethanol at 20 °C, 0 or more.</param>
public readonly record struct StandardDrinks(double EthanolMillilitres)
{
    // Governments' own formulas multiply millilitres by 0.789.
    private const double GramsPerMillilitre = 0.789;

    // 0.6 US fluid ounces, which the institute also states as 14 g.
    private const double UnitedStatesMillilitres = 0.6 * 231 * 16.387064 / 128;

    /// <summary>Standard drinks of 0.6 US fluid ounces, 14 g (NIAAA, What Is a Standard Drink).</summary>
    public double UnitedStates => EthanolMillilitres / UnitedStatesMillilitres;

    /// <summary>Standard drinks of 10 g, at 0.789 g/ml (Australian Government Department of Health, standard drinks guide).</summary>
    public double Australia => TenGrams;

    /// <summary>Standard drinks of 10 g, at 0.789 g/ml (alcohol.org.nz).</summary>
    public double NewZealand => TenGrams;

    /// <summary>Units of 10 ml (NHS, alcohol units).</summary>
    public double UnitedKingdom => EthanolMillilitres / 10;

    /// <summary>Standard drinks of 10 g, at 0.789 g/ml (HSE Ireland).</summary>
    public double Ireland => TenGrams;

    /// <summary>Standard drinks of 17.05 ml, 13.45 g (Health Canada, low-risk alcohol drinking guidelines).</summary>
    public double Canada => EthanolMillilitres / 17.05;

    private double TenGrams => EthanolMillilitres * GramsPerMillilitre / 10;
}
