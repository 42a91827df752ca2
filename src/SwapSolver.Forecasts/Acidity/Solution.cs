using System.Collections.Immutable;
using SwapSolver.Kitchen.Acids;

namespace SwapSolver.Forecasts;

/// <summary>What is dissolved in a kilogram of water at 25 °C.</summary>
/// <param name="Constants">Constants of watery solutions.</param>
/// <param name="Solutes">What gives and takes protons, carbon dioxide apart.</param>
/// <param name="Ions">What only carries charge.</param>
/// <param name="CarbonDioxide">Carbon dioxide; null where there is none.</param>
internal sealed record Solution(
    WaterChemistry Constants,
    ImmutableArray<Solute> Solutes,
    ImmutableArray<FreeIon> Ions,
    CarbonDioxideAbove? CarbonDioxide)
{
    /// <summary>Base that even buffers of food take up per unit of pH [mol/kg].</summary>
    public double BufferSlope { get; init; }

    /// <summary>Their slopes, each times the pH at which it has no charge [mol/kg].</summary>
    public double BufferSlopeTimesPh { get; init; }

    /// <summary>Salt of single charges that takes no part and only adds to the ionic strength [mol/kg].</summary>
    public double InertSalt { get; init; }
}
