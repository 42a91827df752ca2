using System.Collections.Immutable;

namespace SwapSolver.Forecasts;

/// <summary>One bake and its cooling as the model sees it.</summary>
/// <param name="Baked">Time to the core target [s]; null where it is not reached.</param>
/// <param name="Cooled">Time on the rack until it may be sliced [s]; null where it is not reached.</param>
/// <param name="LostShare">Water boiled off, of the batter [1].</param>
/// <param name="InOven">The core in the oven.</param>
/// <param name="OnRack">The core on the rack, from the end of the bake.</param>
internal sealed record BakeRun(double? Baked, double? Cooled, double LostShare, ImmutableArray<CoreReading> InOven, ImmutableArray<CoreReading> OnRack);
