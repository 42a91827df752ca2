using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Solving.Replacing;

/// <summary>One replacement with what ranks it, all by typical facts; the answer is worked out when it is asked for, since only
/// the best are told.</summary>
/// <param name="Formula">The formula with it.</param>
/// <param name="Replaced">What else changes.</param>
/// <param name="Missed">Wishes whose band it misses.</param>
/// <param name="ChangedLines">Lines that differ from before.</param>
/// <param name="BringsAllergen">Whether it brings an allergen that was not there.</param>
/// <param name="IsAboveUsage">Whether a dose is above what a formula bears.</param>
/// <param name="IsUsual">Whether a household kitchen has what comes in.</param>
/// <param name="NeedsHand">Whether water is left to make up for by hand.</param>
/// <param name="MoreInMixing">Share of the gas that comes while mixing beyond what came before [%]; below 0 where less does.</param>
/// <param name="Told">The answer in full.</param>
internal sealed record JudgedReplacement(
    Formula Formula,
    ReplacedLeavening Replaced,
    ImmutableArray<Conflict> Missed,
    int ChangedLines,
    bool BringsAllergen,
    bool IsAboveUsage,
    bool IsUsual,
    bool NeedsHand,
    Percent MoreInMixing,
    Lazy<Answer> Told)
{
    /// <summary>The answer in full.</summary>
    public Answer Answer => Told.Value;
}
