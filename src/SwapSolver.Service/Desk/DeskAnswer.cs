using SwapSolver.V1;

namespace SwapSolver.Service.Desk;

/// <summary>What one step of a question came to.</summary>
/// <param name="Formula">The formula then; null where there is none.</param>
/// <param name="Changes">What it changed in the formula that it was given.</param>
/// <param name="Cautions">Cautions that go with it.</param>
/// <param name="Problems">Why there is no formula; empty where there is one.</param>
internal sealed record DeskAnswer(Formula? Formula, IReadOnlyList<Change> Changes, IReadOnlyList<string> Cautions, IReadOnlyList<string> Problems)
{
    /// <summary>The best of some answers; where there is none, the wishes that fight each other.</summary>
    public static DeskAnswer Of(IReadOnlyList<Answer> answers, IReadOnlyList<Conflict> conflict) => answers.Count > 0
        ? new DeskAnswer(answers[0].Formula, answers[0].Changes, answers[0].Cautions, [])
        : new DeskAnswer(null, [], [], [.. conflict.Select(one => one.Words)]);
}
