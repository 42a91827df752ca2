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
        using var places = new SemaphoreSlim(limits.Solves);
        using var gone = CancellationTokenSource.CreateLinkedTokenSource(context.CancellationToken);
        var reading = Task.Run(async () =>
        {
            try
            {
                await foreach (var request in requestStream.ReadAllAsync(gone.Token))
                {
                    await places.WaitAsync(gone.Token);
                    await answers.Writer.WriteAsync(InItsPlace(request, context, places), gone.Token);
                }

                answers.Writer.Complete();
            }
            catch (Exception fault)
            {
                answers.Writer.Complete(fault);
            }
        });
        try
        {
            await foreach (var answer in answers.Reader.ReadAllAsync(gone.Token))
            {
                await responseStream.WriteAsync(await answer, gone.Token);
            }
        }
        finally
        {
            await gone.CancelAsync();
            await reading;
            while (answers.Reader.TryRead(out var rest))
            {
                await ((Task)rest).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            }
        }
    }

    private async Task<AnswerQuestionResponse> InItsPlace(AnswerQuestionRequest request, ServerCallContext context, SemaphoreSlim places)
    {
        await Task.Yield();
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
        finally
        {
            places.Release();
        }
    }

    private static AnswerQuestionResponse Failed(AnswerQuestionRequest request, AskedFor asked, string problem) =>
        new() { Row = request.Row, Mark = request.Mark, UnderstoodAs = asked, Verdict = Verdict.Failed, Problem = problem };

    [LoggerMessage(EventId = 3, Level = LogLevel.Error, Message = "the question of row {Row} failed")]
    private static partial void RowFailed(ILogger logger, int row, Exception fault);
}
