using System.Diagnostics;
using Google.Protobuf;
using Grpc.Core;
using Microsoft.Extensions.Caching.Hybrid;
using SwapSolver.Service.Records;
using SwapSolver.Service.Translation;
using SwapSolver.Service.Watching;

namespace SwapSolver.Service.Solves;

/// <summary>Keeps answers by their question and by the state of the kitchen's records and of what stored formulas were read
/// for it; what only sums made is not kept. The program and the shipped facts do not
/// change while the service runs, so a question has one answer until something is written down; one that the time cut
/// short is not kept. Who asks what is just being answered waits for that answer.</summary>
internal sealed class AnswerCache(HybridCache kept, KitchenToday kitchen, Subject subject, CallMeter meter)
{
    /// <summary>Others whose answer is waited for and does not come, before a caller asks past the cache.</summary>
    private const int MostOthers = 3;

    /// <summary>The answer of a question, from the cache or made now.</summary>
    /// <param name="question">The request.</param>
    /// <param name="context">The call.</param>
    /// <param name="make">Makes the answer, and says whether the time cut it short.</param>
    public async Task<TAnswer> Get<TAnswer>(IMessage question, ServerCallContext context, Func<Task<(TAnswer Answer, bool EndedEarly)>> make)
        where TAnswer : class, IMessage<TAnswer>, new()
    {
        var key = $"{kitchen.Version}:{subject.States}:{CanonicalQuestion.KeyOf(question, subject.InOrderOfIds)}";
        // The cache makes an answer on a flow of control of its own.
        var (asking, trace) = (CallMeter.Question.Value, Activity.Current);
        for (var others = 0; others < MostOthers; others++)
        {
            var isOurs = false;
            TAnswer? answer = null;
            try
            {
                var bytes = await kept.GetOrCreateAsync(
                    key,
                    async _ =>
                    {
                        isOurs = true;
                        (CallMeter.Question.Value, Activity.Current) = (asking!, trace);
                        var (made, endedEarly) = await make();
                        answer = made;
                        return endedEarly ? throw new NotKeptException(made) : made.ToByteArray();
                    },
                    cancellationToken: context.CancellationToken);
                if (answer is null)
                {
                    answer = new TAnswer();
                    answer.MergeFrom(bytes);
                }

                return Told(answer, !isOurs, question, context);
            }
            catch (NotKeptException cut) when (isOurs)
            {
                return CutShort((TAnswer)cut.Answer, context);
            }
            catch (Exception) when (!isOurs && !context.CancellationToken.IsCancellationRequested)
            {
                // It was another caller's time that ran out, or another who left: this one asks for itself.
            }
        }

        return CutShort((await make()).Answer, context);
    }

    /// <summary>Gives an answer that a few sums made, and keeps none: of a loaf that others asked about, to look would take longer than the sums.
    /// The very same bytes over gRPC are spared them where <see cref="AskedBefore"/> stands before.</summary>
    /// <param name="question">The request.</param>
    /// <param name="context">The call.</param>
    /// <param name="answer">The answer.</param>
    public TAnswer Summed<TAnswer>(IMessage question, ServerCallContext context, TAnswer answer)
        where TAnswer : IMessage => Told(answer, kept: false, question, context);

    /// <summary>Gives an answer that another time may be better.</summary>
    private TAnswer CutShort<TAnswer>(TAnswer answer, ServerCallContext context)
        where TAnswer : IMessage
    {
        AskedBefore.KeepNothing(context.GetHttpContext());
        return Given(answer, kept: false);
    }

    /// <summary>Gives an answer that stands, so that it can be given again.</summary>
    private TAnswer Told<TAnswer>(TAnswer answer, bool kept, IMessage question, ServerCallContext context)
        where TAnswer : IMessage
    {
        var given = Given(answer, kept);
        AskedBefore.Keep(context.GetHttpContext(), question, given);
        return given;
    }

    private TAnswer Given<TAnswer>(TAnswer answer, bool kept)
        where TAnswer : IMessage
    {
        meter.Answered(kept);
        return subject.AsGiven is { } given ? new CallersOrder(given).Given(answer) : answer;
    }

    /// <summary>Carries an answer that is given and not kept past the cache.</summary>
    private sealed class NotKeptException(IMessage answer) : Exception
    {
        public IMessage Answer => answer;
    }
}
