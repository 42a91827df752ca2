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

    [Fact]
    public async Task The_order_of_lines_and_the_unit_make_no_other_question_and_each_gets_its_own_order_back()
    {
        var solver = new CountingSolver();
        await using var service = await RunningService.Start(solver);
        var first = await Bakes.Vary(service, Bakes.Hazelnut);
        var solves = solver.Solves;

        var otherwise = Bakes.Hazelnut;
        var lines = otherwise.Lines.Reverse().ToList();
        otherwise.Lines.Clear();
        otherwise.Lines.AddRange(lines);
        var water = otherwise.Lines.Single(line => line.Ingredient == "ingredients/water");
        (water.Amount, water.Unit) = (water.Grams / 1000, "kg");
        water.ClearGrams();
        var second = await Bakes.Vary(service, otherwise);
        Assert.Equal(solves, solver.Solves);

        var kept = lines.Select(line => line.Ingredient).ToList();
        Assert.Equal(
            second.Answers[0].Formula.Lines.Select(line => line.Ingredient).Where(kept.Contains),
            kept.Where(second.Answers[0].Formula.Lines.Select(line => line.Ingredient).Contains));
        Assert.Equal(
            first.Answers[0].Formula.Lines.OrderBy(line => line.Ingredient, StringComparer.Ordinal),
            second.Answers[0].Formula.Lines.OrderBy(line => line.Ingredient, StringComparer.Ordinal));
        Assert.Equal(first.Answers[0].Cautions, second.Answers[0].Cautions);
        Assert.Empty(first.LinesRead);
        Assert.Contains(second.LinesRead, line => line.Ingredient == "ingredients/water");
    }

    [Fact]
    public async Task A_kept_answer_is_the_fresh_one_to_the_last_byte_whoever_asked_first()
    {
        var reversed = Bakes.Hazelnut;
        var lines = reversed.Lines.Reverse().ToList();
        reversed.Lines.Clear();
        reversed.Lines.AddRange(lines);
        await using var one = await RunningService.Start();
        await using var other = await RunningService.Start();
        await Bakes.Vary(one, reversed);
        Assert.Equal((await Bakes.Vary(other, Bakes.Hazelnut)).ToByteArray(), (await Bakes.Vary(one, Bakes.Hazelnut)).ToByteArray());
        Assert.Equal((await Bakes.Balance(other, reversed)).ToByteArray(), (await Bakes.Balance(one, reversed)).ToByteArray());
    }

    [Fact]
    public async Task Many_who_ask_the_same_at_once_wait_for_one_answer()
    {
        var alone = new CountingSolver();
        await using (var quiet = await RunningService.Start(alone))
        {
            await Bakes.Vary(quiet, Bakes.Hazelnut);
        }

        var solver = new CountingSolver();
        await using var service = await RunningService.Start(solver);
        var answers = await Task.WhenAll(Enumerable.Range(0, 30).Select(async _ => await Bakes.Vary(service, Bakes.Hazelnut)));
        Assert.Equal(alone.Solves, solver.Solves);
        Assert.All(answers, answer => Assert.Equal(answers[0], answer));
    }

    [Fact]
    public async Task Who_waits_for_the_answer_of_one_that_left_asks_for_itself()
    {
        var started = new TaskCompletionSource();
        var solver = new StandInSolver();
        solver.Instead = (_, cancel) =>
        {
            started.TrySetResult();
            cancel.WaitHandle.WaitOne();
            throw new OperationCanceledException(cancel);
        };
        await using var service = await RunningService.Start(solver);
        using var leave = new CancellationTokenSource();
        var first = Bakes.Vary(service, Bakes.Hazelnut, new CallOptions(cancellationToken: leave.Token));
        await started.Task.WaitAsync(TimeSpan.FromSeconds(20));
        var second = Bakes.Vary(service, Bakes.Hazelnut);
        await Task.Delay(200);
        solver.Instead = null;
        await leave.CancelAsync();
        await Assert.ThrowsAsync<RpcException>(async () => await first);
        Assert.NotEmpty((await second).Answers);
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
