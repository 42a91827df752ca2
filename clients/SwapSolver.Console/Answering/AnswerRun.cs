using System.Threading.Channels;
using Grpc.Core;
using SwapSolver.Console.Asking;
using SwapSolver.V1;
using Verdict = SwapSolver.V1.AnswerQuestionResponse.Types.Verdict;

namespace SwapSolver.Console.Answering;

/// <summary>Asks the questions of a table over one stream and passes the answers on in their order.</summary>
/// <param name="table">The questions.</param>
/// <param name="file">Where the answers go, with those of an earlier run; null where they go to <paramref name="tell"/> alone.</param>
/// <param name="tell">Is given each answer.</param>
internal sealed class AnswerRun(QuestionTable table, AnswersFile? file, Action<AnswerQuestionResponse> tell)
{
    /// <summary>Questions that are on their way at once.</summary>
    private const int OnTheWay = 64;

    private int answered;

    private int open;

    /// <summary>Rows that are answered, those of an earlier run too.</summary>
    public int Answered => Volatile.Read(ref answered);

    /// <summary>Rows that were not understood, or failed.</summary>
    public int Open => open;

    /// <summary>Asks everything that an earlier run did not.</summary>
    /// <exception cref="InvalidDataException">The answers of an earlier run belong to other questions.</exception>
    public async Task RunAsync(IServiceConnection service, CancellationToken cancel)
    {
        await using var rows = table.RowsAsync(cancel).GetAsyncEnumerator(cancel);
        var next = await BehindEarlierAsync(rows, cancel);
        if (next is null)
        {
            return;
        }

        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        using var call = new QuestionService.QuestionServiceClient(await service.ReadyAsync(cancel)).AnswerQuestions(cancellationToken: stop.Token);
        var sent = Channel.CreateBounded<QuestionRow>(OnTheWay);
        var sending = SendAsync(call.RequestStream, rows, next, sent.Writer, stop.Token);
        try
        {
            await foreach (var row in sent.Reader.ReadAllAsync(cancel))
            {
                Take(row.Request is null ? row.Refused() : await AnswerAsync(call.ResponseStream, row, cancel));
            }
        }
        finally
        {
            await stop.CancelAsync();
            await sending.ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        }
    }

    private static async Task<AnswerQuestionResponse> AnswerAsync(IAsyncStreamReader<AnswerQuestionResponse> answers, QuestionRow row, CancellationToken cancel) =>
        await answers.MoveNext(cancel) && answers.Current.Row == row.Number
            ? answers.Current
            : throw new RpcException(new Status(StatusCode.DataLoss, $"the service gave no answer to row {row.Number}"));

    private static async Task SendAsync(
        IClientStreamWriter<AnswerQuestionRequest> requests, IAsyncEnumerator<QuestionRow> rows, QuestionRow first, ChannelWriter<QuestionRow> sent, CancellationToken cancel)
    {
        try
        {
            var row = first;
            do
            {
                await sent.WriteAsync(row, cancel);
                if (row.Request is not null)
                {
                    await requests.WriteAsync(row.Request, cancel);
                }
            }
            while (await rows.MoveNextAsync() && (row = rows.Current) is not null);
            await requests.CompleteAsync();
            sent.Complete();
        }
        catch (Exception fault)
        {
            sent.TryComplete(fault);
            throw;
        }
    }

    /// <summary>Passes over what an earlier run answered, and gives the first row behind it; null where there is none.</summary>
    private async Task<QuestionRow?> BehindEarlierAsync(IAsyncEnumerator<QuestionRow> rows, CancellationToken cancel)
    {
        while (true)
        {
            var row = await rows.MoveNextAsync() ? rows.Current : null;
            if (file is null || await file.NextAsync(cancel) is not { } earlier)
            {
                return row;
            }

            if (row is null || earlier.Row != row.Number || earlier.Mark != row.Mark)
            {
                throw new InvalidDataException($"row {earlier.Row} asks something else than when it was answered");
            }

            Count(earlier);
        }
    }

    private void Take(AnswerQuestionResponse answer)
    {
        file?.Add(answer);
        tell(answer);
        Count(answer);
    }

    private void Count(AnswerQuestionResponse answer)
    {
        Interlocked.Increment(ref answered);
        open += answer.Verdict is Verdict.NotUnderstood or Verdict.Failed ? 1 : 0;
    }
}
