using System.Runtime.CompilerServices;

namespace SwapSolver.Forecasts;

/// <summary>What a loaf is made of as its heat sees it, in tables over the temperature.</summary>
internal sealed class Crumb
{
    /// <summary>Conductivity while wet at each temperature of the table [W/(m K)].</summary>
    private readonly double[] wetConductivity;

    private readonly HeatTable heats;

    /// <summary>A crumb of what was tabled.</summary>
    /// <param name="wetConductivity">Conductivity while wet at each temperature of <see cref="HeatTable.Temperatures"/> [W/(m K)].</param>
    /// <param name="heats">Heat of its dry matter and of its water.</param>
    public Crumb(double[] wetConductivity, HeatTable heats)
    {
        this.wetConductivity = wetConductivity;
        this.heats = heats;
    }

    /// <summary>A crumb of formulas.</summary>
    /// <param name="wetConductivity">Conductivity while wet, by temperature [W/(m K)].</param>
    /// <param name="dryHeat">Heat capacity of its dry matter [J/(kg K)].</param>
    /// <param name="waterHeat">Heat capacity of its water [J/(kg K)].</param>
    public Crumb(Func<double, double> wetConductivity, Func<double, double> dryHeat, Func<double, double> waterHeat)
        : this([.. HeatTable.Temperatures.Select(wetConductivity)], new HeatTable(dryHeat, waterHeat))
    {
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

    /// <summary>Conductivity while wet [W/(m K)], the heat capacity of its volume with so much water [J/(m3 K)], and how that rises [J/(m3 K2)].</summary>
    /// <param name="celsius">Temperature.</param>
    /// <param name="water">Water [kg/m3].</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (double WetConductivity, double Heat, double HeatRise) At(double celsius, double water)
    {
        var (index, share) = HeatTable.Place(celsius);
        var (low, high) = (wetConductivity[index], wetConductivity[index + 1]);
        var (dry, wet) = heats.At(index, share);
        var (dryRise, wetRise) = heats.RiseAt(index);
        return (low + (share * (high - low)), (DryDensity * dry) + (water * wet), (DryDensity * dryRise) + (water * wetRise));
    }

    /// <summary>Heat that its volume holds above 0 °C [J/m3].</summary>
    /// <param name="celsius">Temperature.</param>
    /// <param name="water">Water [kg/m3].</param>
    public double EnthalpyAt(double celsius, double water) => (DryDensity * heats.OfDryMatter(celsius)) + (water * HeatOfWater(celsius));

    /// <summary>Heat of a kilogram of its water above 0 °C [J/kg].</summary>
    /// <param name="celsius">Temperature.</param>
    public double HeatOfWater(double celsius) => heats.OfWater(celsius);

    /// <summary>Heat that a kilogram of its water takes along as it boils off, above 0 °C [J/kg].</summary>
    public double SteamEnthalpy => HeatOfWater(Boiling) + Latent;
}
