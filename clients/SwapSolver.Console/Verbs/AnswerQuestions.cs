using System.CommandLine;
using Grpc.Core;
using SwapSolver.Console.Answering;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>answer</c>: a table of readers' questions, answered a row at a time.</summary>
internal sealed class AnswerQuestions
{
    private readonly Argument<string> file = new("QUESTIONS.csv")
    {
        Description = "A table with the columns formula (a file, or formulas/ID) and question; in place of words the columns without, diet, from, from_grams, also_from, to, also_to, also_swaps (as X=Y), slices, mass_grams, factor, tin and target.",
    };

    private readonly Option<string?> outFile = new("--out")
    {
        Description = "Write the answers to this file, one JSON object a row. Asked again with the same file it goes on where it stopped.",
        HelpName = "FILE",
    };

    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var answer = new AnswerQuestions();
        var verb = new VerbCommand(
            "answer",
            "Answers readers' questions by the thousand, in words or in fields: how each was understood, the verdict, what changes, and a reply with its cautions.",
            "swapsolver answer questions.csv --out answers.jsonl")
        {
            answer.file, answer.outFile,
        };
        verb.SetAction((parse, cancel) => answer.RunAsync(errand, parse, cancel));
        return verb;
    }

    private async Task<int> RunAsync(Errand errand, ParseResult parse, CancellationToken cancel)
    {
        var opened = QuestionTable.Open(parse.GetRequiredValue(file));
        if (!opened.IsGood)
        {
            ProblemList.Write(opened.Problems);
            return ExitCode.BadInput;
        }

        using var table = opened.Value;
        var path = parse.GetValue(outFile);
        var answers = path is null ? Checked<AnswersFile>.None : AnswersFile.Open(path);
        if (!answers.IsGood)
        {
            ProblemList.Write(answers.Problems);
            return ExitCode.BadInput;
        }

        using var kept = path is null ? null : answers.Value;
        return await errand.WithServiceAsync(parse, (service, settings) => RunAsync(new AnswerRun(table, kept, Telling(path, settings)), service, path, cancel), cancel);
    }

    private static Action<AnswerQuestionResponse> Telling(string? path, SharedSettings settings) =>
        settings.Json ? JsonOutput.WriteLine
        : path is not null ? _ => { }
    : answer => StandardOutput.Write(CleanText.Of($"{answer.Row}. {(answer.Reply.Length > 0 ? answer.Reply : answer.Problem)}") + "\n");

    private static async Task<int> RunAsync(AnswerRun run, IServiceConnection service, string? path, CancellationToken cancel)
    {
        using var count = new RowCount(() => run.Answered);
        try
        {
            await run.RunAsync(service, cancel);
        }
        catch (InvalidDataException fault)
        {
            ErrorOutput.Write($"{path}: {fault.Message}. Give another --out, or move this file away.");
            return ExitCode.BadInput;
        }
        catch (Exception fault) when (cancel.IsCancellationRequested && fault is RpcException or OperationCanceledException)
        {
            ErrorOutput.Write(path is null ? $"stopped: {RowCount.Words(run.Answered)} answered." : $"stopped: {RowCount.Words(run.Answered)} answered. The same command goes on from there.");
            return ExitCode.Interrupted;
        }
        catch (RpcException fault)
        {
            await ServiceFault.WriteAsync(fault, service, Timeout.InfiniteTimeSpan);
            ErrorOutput.WriteMore(path is null ? $"{RowCount.Words(run.Answered)} answered." : $"{RowCount.Words(run.Answered)} answered. The same command goes on from there.");
            return ExitCode.Of(fault.StatusCode);
        }

        ErrorOutput.Write($"{RowCount.Words(run.Answered)} answered, {run.Open} of them not understood or failed.");
        return run.Open == 0 ? ExitCode.Answer : ExitCode.NoAnswer;
    }
}
