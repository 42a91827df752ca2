using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>How a batter rises, from typical figures alone.</summary>
/// <param name="Freed">When the gas is freed.</param>
/// <param name="WorkingWindow">Time after mixing by which the batter should be in the oven [min]; null where it frees no gas.</param>
/// <param name="Crumb">pH of the cooled crumb; null where it cannot be told.</param>
public sealed record RiseSketch(FreedGas Freed, Minutes? WorkingWindow, Ph? Crumb)
{
    /// <summary>Share of the gas that is freed while mixing [%]; 0 where there is none.</summary>
    public Percent InMixing => ShareOf(Freed.InMixing);

    /// <summary>Share of the gas that is freed in the oven [%]; 0 where there is none.</summary>
    public Percent InOven => ShareOf(Freed.InOven + Freed.ByHeat);

    private Percent ShareOf(Millimoles part) => new(Freed.Total.Value > 0 ? 100 * part.Value / Freed.Total.Value : 0);
}
