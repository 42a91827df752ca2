using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>A tin that a batter would fill well.</summary>
/// <param name="Tin">The tin.</param>
/// <param name="Full">Baked loaf by its volume [%].</param>
public sealed record TinChoice(StandardTin Tin, Percent Full);
