using System.Collections.Immutable;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Solving.Replacing;

/// <summary>One answer with what ranks it.</summary>
/// <param name="Answer">The answer.</param>
/// <param name="Missed">Wishes whose band it misses.</param>
/// <param name="BringsAllergen">Whether it brings an allergen that was not there.</param>
/// <param name="IsAboveUsage">Whether a dose is above what a formula bears.</param>
/// <param name="IsUsual">Whether a household kitchen has what comes in.</param>
/// <param name="NeedsHand">Whether water is left to make up for by hand.</param>
/// <param name="MoreInMixing">Share of the gas that comes while mixing beyond what came before [%]; below 0 where less does.</param>
internal sealed record JudgedReplacement(
    Answer Answer,
    ImmutableArray<Conflict> Missed,
    bool BringsAllergen,
    bool IsAboveUsage,
    bool IsUsual,
    bool NeedsHand,
    Percent MoreInMixing);
