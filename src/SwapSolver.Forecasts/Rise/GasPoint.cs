using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>The gas of a batter at one minute, both volumes at the bowl's temperature and the local pressure.</summary>
/// <param name="At">Time since the soda was wetted [min].</param>
/// <param name="Stage">Where the batter is.</param>
/// <param name="Freed">All gas freed so far, escaped or not [mL].</param>
/// <param name="Held">What of it the batter still holds [mL].</param>
public sealed record GasPoint(Minutes At, RiseStage Stage, Millilitres Freed, Millilitres Held);
