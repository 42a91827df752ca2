using System.Collections.Immutable;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>How a batter fills its tin.</summary>
/// <param name="Batter">Height of the batter before it bakes [mm].</param>
/// <param name="Baked">Height of the baked loaf, level [mm].</param>
/// <param name="Full">Baked loaf by the volume of the tin [%].</param>
/// <param name="Standing">Whether it fits.</param>
/// <param name="Nearest">Tins that shops sell and that it would fill well, the best first.</param>
public sealed record TinFill(MillimetreRange Batter, MillimetreRange Baked, PercentRange Full, FillStanding Standing, ImmutableArray<TinChoice> Nearest);
