using UnitsNet;

namespace Barshow.Engine.Ingredients.Solutions;

/// <summary>Sucrose in water: the ICUMSA density polynomial (SPS-4, as coded after Llano 2005) on the density of water by Kell (1975).</summary>
public static class Sucrose
{
    // kg/m3; one row for each power of (t - 20 °C)/100, from the power 0; in a row by rising power of the mass share, from the power 1.
    private static readonly double[][] Coefficients =
    [
        [385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.2890],
        [-46.2720, -7.1720, 1.1597, 5.1126, 17.5254],
        [59.7712, 7.2491, 12.3630, -35.4791],
        [-47.2207, -21.6977, 27.6301],
        [18.3184, 12.3081],
    ];

    // Percent by mass at 0, 10, 20, 30 and 40 °C (Mohos, Confectionery and Chocolate Engineering, 2010, tables A2.2 and A2.3).
    private static readonly double[] Solubility = [64.18, 65.58, 67.09, 68.70, 70.42];

    /// <summary>The density of a solution.</summary>
    /// <param name="massShare">Grams of sucrose in one gram of solution, 0 to 0.85.</param>
    /// <param name="temperature">0 to 80 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">Either lies outside.</exception>
    public static Density DensityAt(double massShare, Temperature temperature)
    {
        if (massShare is not (>= 0 and <= 0.85))
            throw new ArgumentOutOfRangeException(nameof(massShare), massShare, "The formula holds from 0 to 85 °Bx.");
        if (temperature.DegreesCelsius is not (>= 0 and <= 80))
            throw new ArgumentOutOfRangeException(nameof(temperature), temperature, "The formula holds from 0 to 80 °C.");
        return Density.FromKilogramsPerCubicMeter(KilogramsPerCubicMetre(massShare, temperature.DegreesCelsius));
    }

    /// <summary>The most sucrose that water holds, in grams to the gram of solution; between the points of a table by straight lines. Stronger syrups may crystallise.</summary>
    /// <param name="temperature">0 to 40 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature lies outside.</exception>
    public static double SaturationAt(Temperature temperature)
    {
        var steps = temperature.DegreesCelsius / 10;
        if (steps is not (>= 0 and <= 4))
            throw new ArgumentOutOfRangeException(nameof(temperature), temperature, "The table holds from 0 to 40 °C.");
        var below = Math.Min((int)steps, Solubility.Length - 2);
        return (Solubility[below] + (steps - below) * (Solubility[below + 1] - Solubility[below])) / 100;
    }

    internal static double KilogramsPerCubicMetre(double massShare, double celsius)
    {
        var warmth = (celsius - 20) / 100;
        double density = Water.KilogramsPerCubicMetre(celsius), power = 1;
        foreach (var row in Coefficients)
        {
            var sum = 0.0;
            for (var i = row.Length - 1; i >= 0; i--)
                sum = (sum + row[i]) * massShare;
            density += power * sum;
            power *= warmth;
        }

        return density;
    }
}

/// <summary>Water alone.</summary>
internal static class Water
{
    // Kell, J. Chem. Eng. Data 20 (1975) 97; coefficients from memory. At 20 °C it agrees with OIML R 22 within 0.005 kg/m3.
    public static double KilogramsPerCubicMetre(double celsius) =>
        (999.83952 + celsius * (16.945176 + celsius * (-7.9870401e-3 + celsius * (-46.170461e-6 + celsius * (105.56302e-9 + celsius * -280.54253e-12)))))
        / (1 + 16.879850e-3 * celsius);
}
