using Google.Protobuf;
using Grpc.Core;
using SwapSolver.Service.Tests.Running;
using SwapSolver.Solving.Models;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Solves;

public sealed class AnswerCacheTests
{
    [Fact]
    public async Task The_same_question_of_any_kind_is_solved_once()
    {
        var solver = new CountingSolver();
        await using var service = await RunningService.Start(solver);
        await SolvedOnce(solver, () => Bakes.Vary(service, Bakes.Hazelnut));
        await SolvedOnce(solver, () => Bakes.Check(service, Bakes.Hazelnut));
        await SolvedOnce(solver, () => Bakes.Resize(service, Bakes.Hazelnut));
    }

    [Fact]
    public async Task A_question_that_differs_in_a_gram_is_another_question()
    {
        await using var service = await RunningService.Start();
        var loaf = Bakes.Hazelnut;
        var before = await Bakes.Balance(service, loaf);
        loaf.Lines[0].Grams += 1;
        var after = await Bakes.Balance(service, loaf);
        Assert.Equal(before.Nutrition.PerLoaf.MassG + 0.89, after.Nutrition.PerLoaf.MassG, 9);
    }

    [Fact]
    public async Task An_answer_that_time_cut_short_is_not_kept()
    {
        var solver = new StandInSolver();
        await using var service = await RunningService.Start(solver);
        solver.Instead = (solution, _) => solution with { Outcome = solution.HasPoint ? Outcome.Feasible : solution.Outcome };
        Assert.True((await Bakes.Vary(service, Bakes.Hazelnut)).Answers[0].BestSoFar);
        solver.Instead = null;
        Assert.False((await Bakes.Vary(service, Bakes.Hazelnut)).Answers[0].BestSoFar);
    }

    [Fact]
    public async Task A_verdict_that_time_cut_short_is_not_kept()
    {
        var solver = new StandInSolver { Instead = (_, _) => Solution.None(Outcome.OutOfTime) };
        await using var service = await RunningService.Start(solver);
        await IgnoringTheDeadline(Bakes.Check(service, Bakes.Hazelnut));
        solver.Instead = null;
        Assert.NotNull((await Bakes.Check(service, Bakes.Hazelnut)).Repair);
    }

    [Fact]
    public async Task A_repair_that_was_not_found_in_time_is_sought_again()
    {
        var loaf = Bakes.Hazelnut;
        loaf.Lines.Remove(loaf.Lines.Single(line => line.Ingredient == "ingredients/cream-of-tartar"));
        var solver = new StandInSolver { Instead = (_, _) => Solution.None(Outcome.OutOfTime) };
        await using var service = await RunningService.Start(solver);
        await IgnoringTheDeadline(Bakes.Balance(service, loaf));
        solver.Instead = null;
        Assert.NotNull((await Bakes.Balance(service, loaf)).Repair);
    }

    [Fact]
    public async Task A_conflict_that_time_cut_short_is_not_kept()
    {
        var request = new VaryFormulaRequest { Formula = Bakes.Hazelnut, Without = { "egg" }, Habits = new Habits { NewIngredients = 0 } };
        var solver = new StandInSolver();
        await using var service = await RunningService.Start(solver);
        var whole = await service.Substitutions.VaryFormulaAsync(request);

        // The proof that nothing fits comes just in time; what is asked after it finds the time used up.
        var late = new StandInSolver
        {
            Instead = (solution, _) => solution.Outcome == Outcome.Infeasible ? solution : Solution.None(Outcome.OutOfTime),
        };
        await using var second = await RunningService.Start(late);
        await IgnoringTheDeadline(second.Substitutions.VaryFormulaAsync(request));
        late.Instead = null;
        Assert.Equal(whole, await second.Substitutions.VaryFormulaAsync(request));
    }

    /// <summary>A call whose end does not matter here: whether it is an answer or a passed deadline is tested elsewhere.</summary>
    private static async Task IgnoringTheDeadline<T>(AsyncUnaryCall<T> call)
    {
        try
        {
            await call;
        }
        catch (RpcException fault)
        {
            Assert.Equal(StatusCode.DeadlineExceeded, fault.StatusCode);
        }
    }

    private static async Task SolvedOnce<T>(CountingSolver solver, Func<AsyncUnaryCall<T>> ask)
        where T : IMessage<T>
    {
        var before = solver.Solves;
        var first = await ask();
        var between = solver.Solves;
        var second = await ask();
        Assert.True(between > before);
        Assert.Equal(between, solver.Solves);
        Assert.Equal(first.ToByteArray(), second.ToByteArray());
    }
}
