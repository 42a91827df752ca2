using System.Collections.Immutable;

namespace SwapSolver.Solving.Answers;

/// <summary>What came of a question.</summary>
/// <param name="Answers">Formulas, best first; empty where there is none.</param>
/// <param name="Conflict">Where there is none: the wishes that fight each other.</param>
/// <param name="Nearest">Where there is none: the formula that misses the wishes by least; null where not found.</param>
/// <param name="EndedEarly">Whether the time ran out before everything was tried.</param>
public sealed record Outcomes(
    ImmutableArray<Answer> Answers, ImmutableArray<Conflict> Conflict, Answer? Nearest, bool EndedEarly)
{
    /// <summary>What else would do where leavening is replaced, best first, by typical facts and not worked out in full.</summary>
    public ImmutableArray<ReplacedLeavening> Further { get; init; } = [];

    /// <summary>Whether the time ran out with nothing found: neither an answer nor a proven 'no'.</summary>
    public bool RanOutOfTime => EndedEarly && Answers.IsEmpty && Conflict.IsEmpty && Nearest is null;

    /// <summary>Time ran out with nothing found.</summary>
    public static readonly Outcomes OutOfTime = new([], [], null, true);
}
