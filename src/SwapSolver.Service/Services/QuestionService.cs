using System.Threading.Channels;
using Grpc.Core;
using SwapSolver.Service.Access;
using SwapSolver.Service.Desk;
using SwapSolver.Service.Limits;
using SwapSolver.Service.Solves;
using SwapSolver.V1;
using Verdict = SwapSolver.V1.AnswerQuestionResponse.Types.Verdict;

namespace SwapSolver.Service.Services;

/// <summary>Answers readers' questions, one or thousands.</summary>
internal sealed partial class QuestionService(QuestionDesk desk, IServiceScopeFactory scopes, Caller caller, ServiceLimits limits, ILogger<QuestionService> logger)
    : V1.QuestionService.QuestionServiceBase
{
    /// <summary>Questions that are read ahead of the one whose answer goes out next, for each place of solving: answers go out in the order of the
    /// questions, and while one takes a second no place shall stand empty.</summary>
    private const int AheadOfAPlace = 32;

    /// <summary>Answers that leave in one piece at the most: some tens of thousands of bytes.</summary>
    private const int MostTogether = 16;

    private static readonly WriteOptions BeforeAnother = new(WriteFlags.BufferHint);

    /// <inheritdoc/>
    public override async Task<AnswerQuestionResponse> AnswerQuestion(AnswerQuestionRequest request, ServerCallContext context)
    {
        var answer = await desk.Answer(request, context);
        AskedBefore.Keep(context.GetHttpContext(), request, answer);
        return answer;
    }

    /// <inheritdoc/>
    public override async Task AnswerQuestions(
        IAsyncStreamReader<AnswerQuestionRequest> requestStream, IServerStreamWriter<AnswerQuestionResponse> responseStream, ServerCallContext context)
    {
        // So many answers are on their way at once: memory hangs on that, and not on how many questions there are.
        var answers = Channel.CreateBounded<Task<AnswerQuestionResponse>>(AheadOfAPlace * limits.Solves);
        var waiting = Channel.CreateUnbounded<WaitingRow>();
        using var gone = CancellationTokenSource.CreateLinkedTokenSource(context.CancellationToken);
        var reading = Task.Run(async () =>
        {
            try
            {
                await foreach (var request in requestStream.ReadAllAsync(gone.Token))
                {
                    var row = new WaitingRow(request);
                    await answers.Writer.WriteAsync(row.Answer.Task, gone.Token);
                    waiting.Writer.TryWrite(row);
                }

                answers.Writer.Complete();
            }
            catch (Exception fault)
            {
                answers.Writer.Complete(fault);
            }
            finally
            {
                waiting.Writer.Complete();
            }
        });
        var places = Enumerable.Range(0, limits.Solves).Select(_ => Task.Run(() => AnswerThose(waiting.Reader, context, gone.Token))).ToList();
        try
        {
            var together = 0;
            await foreach (var answer in answers.Reader.ReadAllAsync(gone.Token))
            {
                var given = await answer;
                // What is ready at once leaves in one piece.
                var isNextReady = answers.Reader.TryPeek(out var next) && next.IsCompletedSuccessfully && ++together < MostTogether;
                together = isNextReady ? together : 0;
                responseStream.WriteOptions = isNextReady ? BeforeAnother : null;
                await responseStream.WriteAsync(given, gone.Token);
            }
        }
        finally
        {
            await gone.CancelAsync();
            await reading;
            await Task.WhenAll(places);
            while (answers.Reader.TryRead(out var rest))
            {
                await ((Task)rest).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            }
        }
    }

    /// <summary>One place of solving: answers those that wait, one after the other, until there are no more or nobody waits for the answers.</summary>
    private async Task AnswerThose(ChannelReader<WaitingRow> waiting, ServerCallContext context, CancellationToken gone)
    {
        // To the end: what waits when everybody has gone is let go, not forgotten.
        await foreach (var row in waiting.ReadAllAsync(CancellationToken.None))
        {
            try
            {
                gone.ThrowIfCancellationRequested();
                row.Answer.SetResult(await AnswerOf(row.Request, context));
            }
            catch (Exception left)
            {
                // Whoever would read the answer ends the call by it.
                row.Answer.SetException(left);
            }
        }
    }

    private async Task<AnswerQuestionResponse> AnswerOf(AnswerQuestionRequest request, ServerCallContext context)
    {
        var asked = new AskedFor { Kind = AskedFor.Types.Kind.NotUnderstood };
        try
        {
            await using var scope = scopes.CreateAsyncScope();
            scope.ServiceProvider.GetRequiredService<Caller>().Role = caller.Role;
            return await scope.ServiceProvider.GetRequiredService<QuestionDesk>().Answer(request, context, understood => asked = understood);
        }
        catch (RpcException fault) when (fault.StatusCode is not StatusCode.Cancelled)
        {
            return Failed(request, asked, fault.Status.Detail);
        }
        catch (Exception fault) when (fault is not (OperationCanceledException or RpcException))
        {
            RowFailed(logger, request.Row, fault);
            return Failed(request, asked, "a fault of the service; it has been logged");
        }
    }

    private static AnswerQuestionResponse Failed(AnswerQuestionRequest request, AskedFor asked, string problem) =>
        new() { Row = request.Row, Mark = request.Mark, UnderstoodAs = asked, Verdict = Verdict.Failed, Problem = problem };

    /// <summary>A question that was read and waits for its answer.</summary>
    /// <param name="Request">The question.</param>
    private sealed record WaitingRow(AnswerQuestionRequest Request)
    {
        /// <summary>Its answer; whoever waits for it goes on elsewhere, so that a place goes on to the next question at once.</summary>
        public TaskCompletionSource<AnswerQuestionResponse> Answer { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);
    }

    [LoggerMessage(EventId = 3, Level = LogLevel.Error, Message = "the question of row {Row} failed")]
    private static partial void RowFailed(ILogger logger, int row, Exception fault);
}
