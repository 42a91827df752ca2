using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Solving.Questions;

namespace SwapSolver.Cards.Swaps;

/// <summary>The swaps of a formula that balance, for readers: instead of this use that and change so.</summary>
/// <param name="Formula">The formula.</param>
/// <param name="Swaps">The swaps that balance, as they are or with a repair, in the order of the formula's lines.</param>
/// <param name="Judged">How many pairs were judged.</param>
/// <param name="Pairs">How many there are.</param>
/// <param name="Locale">How numbers are written.</param>
public sealed record SwapTable(Formula Formula, ImmutableArray<ChartedSwap> Swaps, int Judged, int Pairs, Locale Locale)
{
    /// <summary>The table of what a chart found.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="charted">Everything that was judged.</param>
    /// <param name="pairs">How many pairs there are.</param>
    /// <param name="locale">How numbers are written.</param>
    public static SwapTable Of(Formula formula, IReadOnlyList<ChartedSwap> charted, int pairs, Locale locale) => new(
        formula,
        [
            .. charted.GroupBy(swap => swap.Pair.From)
                .SelectMany(group => group.Where(swap => swap.Verdict != Verdict.DoesNotBalance).OrderBy(swap => swap.Verdict).ThenByDescending(swap => swap.Chance)),
        ],
        charted.Count,
        pairs,
        locale);
}
