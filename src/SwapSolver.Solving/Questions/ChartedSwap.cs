using System.Collections.Immutable;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Solving.Questions;

/// <summary>What a chart says of one pair.</summary>
/// <param name="Pair">The pair.</param>
/// <param name="Verdict">Whether it balances in the dose beside it.</param>
/// <param name="Dose">Grams that come in [g]: the same weight where that balances, else the dose that does; null where none does.</param>
/// <param name="Chance">Share of sampled facts in which every band holds, 0 to 1.</param>
/// <param name="Changes">What else changes; empty where nothing need.</param>
/// <param name="Reason">Why, in one sentence.</param>
/// <param name="Cautions">Allergens that come in, net carbs that rise, and what goes with the new ingredient wherever it is.</param>
public sealed record ChartedSwap(
    ChartPair Pair,
    Verdict Verdict,
    Grams? Dose,
    double Chance,
    ImmutableArray<Change> Changes,
    string Reason,
    ImmutableArray<string> Cautions);
