using System.Diagnostics;
using Google.Rpc;
using Grpc.Core;
using SwapSolver.Service.Solves;
using SwapSolver.Service.Tests.Running;
using SwapSolver.Solving.Models;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Solves;

public sealed class SolveRoomTests
{
    // Far above what a machine under load needs to notice that a call has ended, far below any solve that ignores it.
    private static readonly TimeSpan Promptly = TimeSpan.FromSeconds(10);

    [Fact]
    public async Task A_millisecond_is_too_short_for_an_answer_and_says_so_promptly()
    {
        await using var service = await RunningService.Start();
        var clock = Stopwatch.StartNew();
        var fault = await Assert.ThrowsAsync<RpcException>(async () =>
            await Bakes.Vary(service, Bakes.Hazelnut, new CallOptions(deadline: DateTime.UtcNow.AddMilliseconds(1))));
        Assert.Equal(StatusCode.DeadlineExceeded, fault.StatusCode);
        Assert.InRange(clock.Elapsed, TimeSpan.Zero, Promptly);
    }

    [Fact]
    public async Task A_caller_who_leaves_stops_the_solver()
    {
        var started = new TaskCompletionSource();
        var stopped = new TaskCompletionSource();
        await using var service = await RunningService.Start(new StandInSolver { Instead = WaitUntilStopped(started, stopped) });
        using var leave = new CancellationTokenSource();
        var call = Bakes.Vary(service, Bakes.Hazelnut, new CallOptions(cancellationToken: leave.Token));
        await started.Task.WaitAsync(Promptly);
        await leave.CancelAsync();
        var fault = await Assert.ThrowsAsync<RpcException>(async () => await call);
        Assert.Equal(StatusCode.Cancelled, fault.StatusCode);
        await stopped.Task.WaitAsync(Promptly);
    }

    [Fact]
    public async Task A_deadline_that_passes_stops_the_solver()
    {
        var started = new TaskCompletionSource();
        var stopped = new TaskCompletionSource();
        await using var service = await RunningService.Start(new StandInSolver { Instead = WaitUntilStopped(started, stopped) });
        var fault = await Assert.ThrowsAsync<RpcException>(async () =>
            await Bakes.Vary(service, Bakes.Hazelnut, new CallOptions(deadline: DateTime.UtcNow.AddSeconds(2))));
        Assert.Equal(StatusCode.DeadlineExceeded, fault.StatusCode);
        await stopped.Task.WaitAsync(Promptly);
    }

    [Fact]
    public async Task A_solver_that_finds_nothing_in_time_is_no_answer_of_no()
    {
        await using var service = await RunningService.Start(new StandInSolver { Instead = (_, _) => Solution.None(Outcome.OutOfTime) });
        await OutOfTime(Bakes.Vary(service, Bakes.Hazelnut));
        await OutOfTime(Bakes.Resize(service, Bakes.Hazelnut));
        await OutOfTime(Bakes.Check(service, Bakes.Hazelnut));
    }

    [Fact]
    public async Task A_loaf_that_time_did_not_prove_best_is_marked_as_such()
    {
        await using var service = await RunningService.Start(new StandInSolver
        {
            Instead = (solution, _) => solution with { Outcome = solution.HasPoint ? Outcome.Feasible : solution.Outcome },
        });
        var response = await Bakes.Vary(service, Bakes.Hazelnut);
        Assert.All(response.Answers, answer =>
        {
            Assert.True(answer.BestSoFar);
            Assert.Contains(answer.Notes, note => note.Contains("Time ran out", StringComparison.Ordinal));
        });
    }

    [Fact]
    public async Task Many_bakers_at_once_each_get_the_answer_to_their_own_question()
    {
        await using var service = await RunningService.Start(null, null, ("Limits:SolvesWaiting", "12"));
        var answers = await Task.WhenAll(Enumerable.Range(1, 12).Select(async number =>
        {
            var formula = Bakes.Rolls;
            formula.DisplayName = $"Rolls {number}";
            return await Bakes.Resize(service, formula);
        }));
        Assert.Equal(
            Enumerable.Range(1, 12).Select(number => $"Rolls {number}"),
            answers.Select(answer => answer.Answers[0].Formula.DisplayName));
    }

    [Fact]
    public async Task Who_comes_when_all_places_and_the_queue_are_taken_is_told_so_at_once_and_when_to_come_again()
    {
        await using var full = await FullKitchen.Open();
        var (service, room) = (full.Service, full.Room);
        Assert.Equal(1, room.Running);

        var refusal = await Refusal.Of(() => Bakes.Check(service, Bakes.Rolls));
        Assert.Equal((StatusCode.ResourceExhausted, "BUSY"), (refusal.Code, refusal.Info.Reason));
        Assert.True(refusal.Retry > TimeSpan.Zero);
        // A search that is answered piece by piece waits in the same queue.
        var streamed = await Refusal.Of(() => service.Substitutions.ChartSwaps(new ChartSwapsRequest { Formula = Bakes.Rolls }));
        Assert.Equal("BUSY", streamed.Info.Reason);

        await full.Leave();
        await Assert.ThrowsAsync<RpcException>(() => full.Baking);
        await Assert.ThrowsAsync<RpcException>(() => full.Waiting);
        Assert.True(SpinWait.SpinUntil(() => room.Running == 0 && room.Waiting == 0, Promptly), "places are not given back");
    }

    [Fact]
    public async Task Of_two_who_come_shortly_after_each_other_while_the_place_is_taken_the_later_one_waits()
    {
        var (started, stopped) = (new TaskCompletionSource(), new TaskCompletionSource());
        await using var service = await RunningService.Start(
            new StandInSolver { Instead = WaitUntilStopped(started, stopped) }, null, ("Limits:SolvesAtOnce", "1"), ("Limits:SolvesWaiting", "1"));
        using var leave = new CancellationTokenSource();
        var baking = Bakes.Vary(service, Bakes.Hazelnut, new CallOptions(cancellationToken: leave.Token)).ResponseAsync;
        await started.Task.WaitAsync(Promptly);
        var room = (SolveRoom)service.Parts.GetService(typeof(SolveRoom))!;
        var hadToLeave = false;
        // On a busy machine the later one can come too late, when the other waits inside already; then they try again.
        for (var attempt = 0; attempt < 200 && !hadToLeave; attempt++)
        {
            using var give = new CancellationTokenSource();
            var options = new CallOptions(cancellationToken: give.Token);
            var first = Bakes.Resize(service, Bakes.Hazelnut, options).ResponseAsync;
            Assert.True(SpinWait.SpinUntil(() => room.Waiting == 1, Promptly), "nobody waits");
            var second = Bakes.Check(service, Bakes.Rolls, options).ResponseAsync;
            var refused = await Task.WhenAny(first, second).WaitAsync(Promptly);
            var refusal = await Assert.ThrowsAsync<RpcException>(() => refused);
            Assert.Equal((StatusCode.ResourceExhausted, "BUSY"), (refusal.StatusCode, refusal.GetRpcStatus()!.GetDetail<ErrorInfo>().Reason));
            hadToLeave = refused == first;
            Assert.Equal(1, room.Waiting);
            await give.CancelAsync();
            Assert.True(SpinWait.SpinUntil(() => room.Waiting == 0, Promptly), "who left still waits");
        }

        Assert.True(hadToLeave, "the later one never waited");
        await leave.CancelAsync();
        await Assert.ThrowsAsync<RpcException>(() => baking);
    }

    private static async Task OutOfTime<T>(AsyncUnaryCall<T> call)
    {
        var fault = await Assert.ThrowsAsync<RpcException>(async () => await call);
        Assert.Equal(StatusCode.DeadlineExceeded, fault.StatusCode);
    }

    private static Func<Solution, CancellationToken, Solution> WaitUntilStopped(TaskCompletionSource started, TaskCompletionSource stopped) => (_, cancel) =>
    {
        started.TrySetResult();
        cancel.WaitHandle.WaitOne();
        stopped.TrySetResult();
        throw new OperationCanceledException(cancel);
    };
}
