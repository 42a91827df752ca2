using System.Globalization;
using Grpc.Core;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Watching;

/// <summary>Counts are of the whole process, so nobody else asks beside these tests.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class CountedAlone
{
    public const string Name = "counted alone";
}

[Collection(CountedAlone.Name)]
public sealed class MetricsTests
{
    [Fact]
    public async Task Who_watches_sees_calls_solves_kept_answers_and_refusals_by_question()
    {
        await using var service = await RunningService.Start();
        await Bakes.Vary(service, Bakes.Hazelnut);
        await Bakes.Vary(service, Bakes.Hazelnut);
        await Assert.ThrowsAsync<RpcException>(async () => await service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Name = "formulas/none" }));

        var text = await service.Http.GetStringAsync(new Uri("/metrics", UriKind.Relative));
        Assert.Equal(2, Figure(text, "swapsolver_calls_total", "code=\"OK\"", "question=\"VaryFormula\""));
        Assert.Equal(1, Figure(text, "swapsolver_calls_total", "code=\"NotFound\"", "question=\"BalanceFormula\""));
        Assert.Equal(1, Figure(text, "swapsolver_answers_total", "kept=\"yes\"", "question=\"VaryFormula\""));
        Assert.Equal(1, Figure(text, "swapsolver_answers_total", "kept=\"no\"", "question=\"VaryFormula\""));
        Assert.True(Figure(text, "swapsolver_solve_duration_seconds_count", "question=\"VaryFormula\"") >= 1, text);
        Assert.True(Figure(text, "swapsolver_solve_nodes_sum", "question=\"VaryFormula\"") >= 1, text);
        Assert.Equal(0, Figure(text, "swapsolver_solves_running"));
        Assert.Equal(2, Figure(text, "swapsolver_call_duration_seconds_count", "question=\"VaryFormula\""));
    }

    [Fact]
    public async Task Who_is_turned_away_from_a_full_house_is_counted()
    {
        await using var full = await FullKitchen.Open();
        for (var call = 0; call < 3; call++)
        {
            await Assert.ThrowsAsync<RpcException>(() => Checked(full.Service));
        }

        var text = await full.Service.Http.GetStringAsync(new Uri("/metrics", UriKind.Relative));
        Assert.Equal(3, Figure(text, "swapsolver_calls_refused_total", "reason=\"BUSY\"", "question=\"CheckSwap\""));
        Assert.Equal(3, Figure(text, "swapsolver_calls_total", "code=\"ResourceExhausted\"", "question=\"CheckSwap\""));
    }

    [Theory]
    [InlineData("CheckSwap")]
    [InlineData("AnswerQuestion")]
    public async Task Who_asks_in_the_same_bytes_is_soon_answered_without_being_read(string question)
    {
        await using var service = await RunningService.Start();
        // A question that is not whole yet when it is looked at is read as any other.
        for (var asked = 0; asked < 100; asked++)
        {
            await (question == "CheckSwap" ? Checked(service) : InWords(service));
            if (Figure(await service.Http.GetStringAsync(new Uri("/metrics", UriKind.Relative)), "swapsolver_answers_total", "unread=\"yes\"", $"question=\"{question}\"") > 0)
            {
                return;
            }
        }

        Assert.Fail("every one of a hundred was read");
    }

    private static async Task Checked(RunningService service) => await Bakes.Check(service, Bakes.Rolls);

    private static async Task InWords(RunningService service) =>
        await service.Questions.AnswerQuestionAsync(new AnswerQuestionRequest { Formula = Bakes.Hazelnut, Question = "can I leave out the egg?" });

    private static double Figure(string text, string name, params string[] labels) => text.Split('\n')
        .Where(line => line.StartsWith(name, StringComparison.Ordinal) && labels.All(label => line.Contains(label, StringComparison.Ordinal)))
        .Select(line => line.Split(' '))
        .Where(parts => parts.Length > 1)
        .Sum(parts => double.Parse(parts[1], CultureInfo.InvariantCulture));
}
