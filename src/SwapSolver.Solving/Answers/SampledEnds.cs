namespace SwapSolver.Solving.Answers;

/// <summary>Where a band ends, by kitchen; one figure each where all kitchens have the same.</summary>
/// <param name="Lowest">The lowest level that is inside, in the unit of the band; negative infinity where that side is open.</param>
/// <param name="Highest">The highest; infinity where that side is open.</param>
internal sealed record SampledEnds(double[] Lowest, double[] Highest);
