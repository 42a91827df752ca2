namespace SwapSolver.Forecasts;

/// <summary>What a loaf is made of as its heat sees it, in tables over the temperature.</summary>
internal sealed class Crumb
{
    private const double Coldest = -20, Hottest = 360, Step = 0.5;

    /// <summary>Conductivity, dry heat and water heat of each temperature, side by side: one step reads all three.</summary>
    private readonly double[] table;

    /// <summary>Heat above 0 °C of a kilogram of dry matter and of water at each temperature of the table [J/kg].</summary>
    private readonly double[] dryEnthalpy, waterEnthalpy;

    /// <summary>Fills the table.</summary>
    /// <param name="wetConductivity">Conductivity while wet, by temperature [W/(m K)].</param>
    /// <param name="dryHeat">Heat capacity of its dry matter [J/(kg K)].</param>
    /// <param name="waterHeat">Heat capacity of its water [J/(kg K)].</param>
    public Crumb(Func<double, double> wetConductivity, Func<double, double> dryHeat, Func<double, double> waterHeat)
    {
        table =
        [
            .. Enumerable.Range(0, (int)((Hottest - Coldest) / Step) + 2)
                .Select(index => Coldest + (index * Step))
                .SelectMany(celsius => new[] { wetConductivity(celsius), dryHeat(celsius), waterHeat(celsius) }),
        ];
        (dryEnthalpy, waterEnthalpy) = (Summed(1), Summed(2));
    }

    /// <summary>Dry matter in the loaf's volume [kg/m3].</summary>
    public required double DryDensity { get; init; }

    /// <summary>Water in the loaf's volume before it bakes [kg/m3]; 0 where nothing can boil off.</summary>
    public required double WaterDensity { get; init; }

    /// <summary>Water that stays in the crust [kg/m3].</summary>
    public required double CrustWaterDensity { get; init; }

    /// <summary>Conductivity of the crust [W/(m K)].</summary>
    public required double CrustConductivity { get; init; }

    /// <summary>Where its water boils [°C].</summary>
    public required double Boiling { get; init; }

    /// <summary>Heat that boils off a kilogram of its water [J/kg].</summary>
    public required double Latent { get; init; }

    /// <summary>Conductivity while wet [W/(m K)], and the heat capacity of its volume with so much water [J/(m3 K)].</summary>
    /// <param name="celsius">Temperature.</param>
    /// <param name="water">Water [kg/m3].</param>
    public (double WetConductivity, double Heat) At(double celsius, double water)
    {
        var place = (Math.Clamp(celsius, Coldest, Hottest) - Coldest) * (1 / Step);
        var index = (int)place;
        var share = place - index;
        var entry = table.AsSpan(index * 3, 6);
        var dry = entry[1] + (share * (entry[4] - entry[1]));
        var wet = entry[2] + (share * (entry[5] - entry[2]));
        return (entry[0] + (share * (entry[3] - entry[0])), (DryDensity * dry) + (water * wet));
    }

    /// <summary>Heat that its volume holds above 0 °C [J/m3].</summary>
    /// <param name="celsius">Temperature.</param>
    /// <param name="water">Water [kg/m3].</param>
    public double EnthalpyAt(double celsius, double water) => (DryDensity * Enthalpy(dryEnthalpy, 1, celsius)) + (water * HeatOfWater(celsius));

    /// <summary>Heat of a kilogram of its water above 0 °C [J/kg].</summary>
    /// <param name="celsius">Temperature.</param>
    public double HeatOfWater(double celsius) => Enthalpy(waterEnthalpy, 2, celsius);

    /// <summary>Heat that a kilogram of its water takes along as it boils off, above 0 °C [J/kg].</summary>
    public double SteamEnthalpy => HeatOfWater(Boiling) + Latent;

    /// <summary>A heat capacity of the table summed up; it is straight between the entries, so the trapezium is exact.</summary>
    private double[] Summed(int column)
    {
        var sums = new double[table.Length / 3];
        for (var index = 1; index < sums.Length; index++)
        {
            sums[index] = sums[index - 1] + (Step / 2 * (table[((index - 1) * 3) + column] + table[(index * 3) + column]));
        }

        var atZero = sums[(int)(-Coldest / Step)];
        return [.. sums.Select(sum => sum - atZero)];
    }

    private double Enthalpy(double[] sums, int column, double celsius)
    {
        var place = (Math.Clamp(celsius, Coldest, Hottest) - Coldest) * (1 / Step);
        var index = (int)place;
        var (share, low, high) = (place - index, table[(index * 3) + column], table[((index + 1) * 3) + column]);
        return sums[index] + (Step * share * (low + (share / 2 * (high - low))));
    }
}
