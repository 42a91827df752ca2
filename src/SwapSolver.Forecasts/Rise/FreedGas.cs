using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>When the carbon dioxide of soda and powder is freed.</summary>
/// <param name="InMixing">By acid, while mixing [mmol].</param>
/// <param name="OnBench">By acid, on the bench [mmol].</param>
/// <param name="InOven">By acid, in the oven [mmol].</param>
/// <param name="ByHeat">By heat alone, in the oven, from soda that acid leaves [mmol].</param>
public sealed record FreedGas(Millimoles InMixing, Millimoles OnBench, Millimoles InOven, Millimoles ByHeat)
{
    /// <summary>All of it [mmol].</summary>
    public Millimoles Total => InMixing + OnBench + InOven + ByHeat;
}
