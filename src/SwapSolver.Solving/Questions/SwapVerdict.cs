using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Solving.Questions;

/// <summary>What came of a check.</summary>
/// <param name="Verdict">Whether the swaps balance.</param>
/// <param name="Swapped">The formula with the swaps made as proposed.</param>
/// <param name="Readings">Its readings.</param>
/// <param name="Repair">What would make it balance; null where nothing is needed or nothing was found.</param>
/// <param name="Reasons">One sentence a balance that is missed.</param>
/// <param name="Reply">Words to answer a reader with.</param>
/// <param name="Cautions">Cautions that go with the swap.</param>
/// <param name="Conflict">Where no repair exists: the wishes that fight each other.</param>
/// <param name="EndedEarly">Whether the time ran out before everything was tried.</param>
public sealed record SwapVerdict(
    Verdict Verdict,
    Formula Swapped,
    ImmutableArray<Reading> Readings,
    Answer? Repair,
    ImmutableArray<string> Reasons,
    string Reply,
    ImmutableArray<string> Cautions,
    ImmutableArray<Conflict> Conflict,
    bool EndedEarly)
{
    /// <summary>Whether the time ran out with nothing to say: neither a yes nor a proven no.</summary>
    public bool RanOutOfTime => EndedEarly && Verdict == Verdict.DoesNotBalance && Repair is null && Conflict.IsEmpty;
}
