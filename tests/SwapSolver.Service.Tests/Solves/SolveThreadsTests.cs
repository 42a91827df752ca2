using System.Collections.Concurrent;
using SwapSolver.Service.Solves;

namespace SwapSolver.Service.Tests.Solves;

public sealed class SolveThreadsTests
{
    // Far above what a machine under load needs to hand a solve over.
    private static readonly TimeSpan Promptly = TimeSpan.FromSeconds(10);

    [Fact]
    public async Task As_many_solve_at_once_as_may_and_the_next_waits()
    {
        using var threads = new SolveThreads(2);
        using var both = new CountdownEvent(2);
        using var over = new ManualResetEventSlim();
        var third = new TaskCompletionSource();
        Task[] solves = [.. Enumerable.Range(0, 2).Select(_ => On(threads, () =>
        {
            both.Signal();
            over.Wait(Promptly);
        })), On(threads, third.SetResult)];
        Assert.True(both.Wait(Promptly));
        Assert.False(third.Task.IsCompleted);
        over.Set();
        await Task.WhenAll(solves).WaitAsync(Promptly);
    }

    [Fact]
    public async Task A_hundred_solves_share_two_threads_and_none_of_those_that_serve_the_network()
    {
        using var threads = new SolveThreads(2);
        var seen = new ConcurrentDictionary<int, bool>();
        await Task.WhenAll(Enumerable.Range(0, 100).Select(_ => On(threads, () =>
            seen[Environment.CurrentManagedThreadId] = Thread.CurrentThread.IsThreadPoolThread))).WaitAsync(Promptly);
        Assert.InRange(seen.Count, 1, 2);
        Assert.DoesNotContain(true, seen.Values);
    }

    [Fact]
    public async Task A_solve_that_fails_takes_no_thread_with_it()
    {
        using var threads = new SolveThreads(1);
        await Assert.ThrowsAsync<InvalidOperationException>(() => On(threads, () => throw new InvalidOperationException("no")));
        await On(threads, () => { }).WaitAsync(Promptly);
    }

    [Fact]
    public async Task When_the_kitchen_closes_its_threads_end()
    {
        var threads = new SolveThreads(1);
        var thread = await Task.Factory.StartNew(() => Thread.CurrentThread, CancellationToken.None, TaskCreationOptions.None, threads).WaitAsync(Promptly);
        threads.Dispose();
        Assert.True(thread.Join(Promptly));
    }

    private static Task On(SolveThreads threads, Action solve) =>
        Task.Factory.StartNew(solve, CancellationToken.None, TaskCreationOptions.None, threads);
}
