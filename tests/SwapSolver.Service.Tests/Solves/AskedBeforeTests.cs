using Google.Protobuf;
using Grpc.Core;
using SwapSolver.Service.Tests.Running;
using SwapSolver.Solving.Models;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Solves;

public sealed class AskedBeforeTests
{
    private static readonly Marshaller<byte[]> AsItIs = Marshallers.Create(bytes => bytes, bytes => bytes);

    /// <summary>A question that is asked so often comes to rest, however busy the machine is.</summary>
    private const int MostTimes = 10;

    [Fact]
    public async Task The_same_bytes_get_the_same_bytes()
    {
        await using var service = await RunningService.Start();
        var first = await Sent(service, service.Key, Nutless);
        Assert.NotEmpty(VaryFormulaResponse.Parser.ParseFrom(first).Answers);
        for (var again = 0; again < 10; again++)
        {
            Assert.Equal(first, await Sent(service, service.Key, Nutless));
        }
    }

    /// <summary>A stream has no end that is known at its start, so what bounds a message does not bound it.</summary>
    [Fact]
    public async Task A_stream_of_questions_may_be_larger_than_a_message()
    {
        const int rows = 200;
        await using var service = await RunningService.Start(null, null, ("Limits:MessageBytes", "4096"));
        using var stream = service.Questions.AnswerQuestions();
        var asking = Task.Run(async () =>
        {
            for (var row = 1; row <= rows; row++)
            {
                await stream.RequestStream.WriteAsync(new AnswerQuestionRequest { Row = row, Formula = Bakes.Hazelnut, Question = "what is the weather like?" });
            }

            await stream.RequestStream.CompleteAsync();
        });
        var seen = await stream.ResponseStream.ReadAllAsync().CountAsync();
        await asking;
        Assert.Equal(rows, seen);
    }

    [Fact]
    public async Task What_was_measured_meanwhile_is_in_the_answer()
    {
        await using var service = await RunningService.Start();
        var before = await Sent(service, service.Key, Nutless);
        await service.Ingredients.MeasureIngredientAsync(new MeasureIngredientRequest
        {
            Name = "ingredients/psyllium-husk-powder",
            Soak = new SoakTest { DryG = 5, DrainedG = 70 },
        });
        Assert.NotEqual(before, await Sent(service, service.Key, Nutless));
    }

    [Fact]
    public async Task A_key_that_was_taken_back_gets_nothing_that_was_asked_before()
    {
        await using var service = await RunningService.Start();
        var made = await service.Keys.CreateKeyAsync(new CreateKeyRequest { DisplayName = "a reader", Role = Key.Types.Role.Reader });
        await Sent(service, made.Secret, Nutless);
        await service.Keys.RevokeKeyAsync(new RevokeKeyRequest { Name = made.Key.Name });
        var refused = await Assert.ThrowsAsync<RpcException>(() => Sent(service, made.Secret, Nutless));
        Assert.Equal(StatusCode.Unauthenticated, refused.StatusCode);
    }

    [Fact]
    public async Task Who_asks_too_often_is_refused_what_was_asked_before_too()
    {
        await using var service = await RunningService.Start(null, null, ("Limits:CallerBurst", "2"), ("Limits:CallerCallsPerSecond", "0.01"));
        await Sent(service, service.Key, Nutless);
        await Sent(service, service.Key, Nutless);
        var refused = await Assert.ThrowsAsync<RpcException>(() => Sent(service, service.Key, Nutless));
        Assert.Equal(StatusCode.ResourceExhausted, refused.StatusCode);
    }

    [Fact]
    public async Task A_question_asked_on_behalf_of_a_readers_is_not_taken_for_it()
    {
        await using var service = await RunningService.Start();
        var words = new AnswerQuestionRequest { Formula = Bakes.Hazelnut, Question = "can I leave out the egg?" };
        var first = await service.Questions.AnswerQuestionAsync(words);
        Assert.Equal(first, await service.Questions.AnswerQuestionAsync(words));
    }

    [Fact]
    public async Task A_readers_question_that_time_cut_short_is_asked_anew()
    {
        var (solves, isCut) = (0, true);
        var solver = new StandInSolver
        {
            Instead = (solution, _) =>
            {
                Interlocked.Increment(ref solves);
                return isCut && solution.HasPoint ? solution with { Outcome = Outcome.Feasible } : solution;
            },
        };
        await using var service = await RunningService.Start(solver);
        var words = new AnswerQuestionRequest { Formula = Bakes.Hazelnut, Question = "can I leave out the egg?" };
        async Task<int> SolvesOfOneMore()
        {
            var before = solves;
            await service.Questions.AnswerQuestionAsync(words);
            return solves - before;
        }

        Assert.True(await SolvesOfOneMore() > 0);
        Assert.True(await SolvesOfOneMore() > 0);
        isCut = false;
        Assert.True(await SolvesOfOneMore() > 0);
        // On a busy machine a solve may run out of its own time too, and is then asked anew; what is whole is kept.
        var more = await SolvesOfOneMore();
        for (var times = 1; more > 0 && times < MostTimes; times++)
        {
            more = await SolvesOfOneMore();
        }

        Assert.Equal(0, more);
    }

    private static VaryFormulaRequest Nutless => new() { Formula = Bakes.Hazelnut, Without = { "tree-nuts" } };

    /// <summary>The answer as it comes over the wire.</summary>
    private static async Task<byte[]> Sent(RunningService service, string key, VaryFormulaRequest request)
    {
        var method = new Method<byte[], byte[]>(MethodType.Unary, "swapsolver.v1.SubstitutionService", "VaryFormula", AsItIs, AsItIs);
        return await service.With(key).AsyncUnaryCall(method, null, default, request.ToByteArray());
    }
}
