using SwapSolver.Kitchen.Practice;

namespace SwapSolver.Forecasts;

/// <summary>Thermal properties of a batter without its bubbles, from what it is made of (Choi and Okos 1986).</summary>
/// <param name="Composition">What it is made of.</param>
/// <param name="Components">Polynomials of each component.</param>
internal sealed record CondensedMatter(Composition Composition, ThermalComponents Components)
{
    private readonly (double Share, ThermalComponent Component)[] parts =
    [
        (Composition.Water, Components.Water), (Composition.Protein, Components.Protein), (Composition.Fat, Components.Fat),
        (Composition.Carbohydrate, Components.Carbohydrate), (Composition.Fibre, Components.Fibre), (Composition.Ash, Components.Ash),
    ];

    /// <summary>Heat capacity [J/(kg K)]: shares by mass.</summary>
    public double HeatAt(double celsius) => 1000 * parts.Sum(part => part.Share * part.Component.Heat.At(celsius));

    /// <summary>Heat capacity of its dry matter [J/(kg K)].</summary>
    public double DryHeatAt(double celsius) => 1000 * parts.Skip(1).Sum(part => part.Share * part.Component.Heat.At(celsius)) / (1 - Composition.Water);

    /// <summary>Heat capacity of its water [J/(kg K)].</summary>
    public double WaterHeatAt(double celsius) => 1000 * Components.Water.Heat.At(celsius);

    /// <summary>Density [kg/m3]: volumes add up.</summary>
    public double DensityAt(double celsius) => 1 / parts.Sum(part => part.Share / part.Component.Density.At(celsius));

    /// <summary>Conductivity with all parts side by side along the heat, the upper bound [W/(m K)].</summary>
    public double ParallelConductivityAt(double celsius) =>
        Volumes(celsius).Sum(part => part.Volume * part.Component.Conductivity.At(celsius));

    /// <summary>Conductivity with all parts one behind another, the lower bound [W/(m K)].</summary>
    public double SeriesConductivityAt(double celsius) =>
        1 / Volumes(celsius).Sum(part => part.Volume / part.Component.Conductivity.At(celsius));

    private IEnumerable<(double Volume, ThermalComponent Component)> Volumes(double celsius)
    {
        var density = DensityAt(celsius);
        return parts.Select(part => (part.Share * density / part.Component.Density.At(celsius), part.Component));
    }
}
