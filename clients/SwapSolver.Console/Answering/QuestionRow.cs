using SwapSolver.V1;

namespace SwapSolver.Console.Answering;

/// <summary>One row of a table of questions.</summary>
/// <param name="Number">Its number, from 1, without the line of column names.</param>
/// <param name="Request">The question; null where the row cannot be asked.</param>
/// <param name="Problem">Why it cannot be asked; null where it can.</param>
/// <param name="Mark">A mark of everything that the row asks, its formula too.</param>
internal sealed record QuestionRow(int Number, AnswerQuestionRequest? Request, string? Problem, string Mark)
{
    /// <summary>What stands in the answers for a row that cannot be asked.</summary>
    public AnswerQuestionResponse Refused() => new()
    {
        Row = Number,
        Mark = Mark,
        UnderstoodAs = new AskedFor { Kind = AskedFor.Types.Kind.NotUnderstood },
        Verdict = AnswerQuestionResponse.Types.Verdict.Failed,
        Problem = Problem,
    };
}
