using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Solving.Answers;

/// <summary>A formula that meets every wish, with what there is to say of it.</summary>
/// <param name="Formula">The formula.</param>
/// <param name="Readings">Its readings.</param>
/// <param name="Changes">What differs from the reference.</param>
/// <param name="Cautions">Cautions that go with it.</param>
/// <param name="ChanceOfBalance">Share of sampled facts in which every band holds, 0 to 1.</param>
/// <param name="Binding">Ids of balances that lie at an end of their band.</param>
/// <param name="Notes">How it was found, where a baker should know.</param>
/// <param name="IsBestSoFar">Whether the time ran out before it was proven best.</param>
public sealed record Answer(
    Formula Formula,
    ImmutableArray<Reading> Readings,
    ImmutableArray<Change> Changes,
    ImmutableArray<string> Cautions,
    double ChanceOfBalance,
    ImmutableArray<string> Binding,
    ImmutableArray<string> Notes,
    bool IsBestSoFar)
{
    /// <summary>The facts that decide whether it balances, the most decisive first.</summary>
    public ImmutableArray<DecisiveFact> Decisive { get; init; } = [];

    /// <summary>What a little more room in a band would buy, the dearest band first.</summary>
    public ImmutableArray<Slack> Slack { get; init; } = [];

    /// <summary>The model that it is the answer to, in the free MPS text; empty where nobody asked for it.</summary>
    public string Model { get; init; } = string.Empty;

    /// <summary>What else changes where leavening was replaced; null elsewhere.</summary>
    public ReplacedLeavening? Replaced { get; init; }
}
