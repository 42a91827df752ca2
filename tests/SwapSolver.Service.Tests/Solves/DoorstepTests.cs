using System.Threading.RateLimiting;
using SwapSolver.Service.Solves;

namespace SwapSolver.Service.Tests.Solves;

public sealed class DoorstepTests : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly Hand hand = new();

    private readonly ConcurrencyLimiter places = new(new ConcurrencyLimiterOptions { PermitLimit = 1, QueueLimit = 1, QueueProcessingOrder = QueueProcessingOrder.OldestFirst });

    private readonly Doorstep door;

    public DoorstepTests() => door = new Doorstep(hand, places, most: 1);

    public void Dispose() => places.Dispose();

    [Fact]
    public async Task Who_comes_while_a_place_is_free_goes_in_at_once_and_the_place_is_kept_for_it()
    {
        using var first = await Come();
        Assert.NotNull(first);
        Assert.Equal(0, door.Waiting);
        var second = Come();
        Assert.False(second.IsCompleted);
        Assert.Equal(1, door.Waiting);
    }

    [Fact]
    public async Task Of_those_who_would_wait_too_many_the_one_is_turned_away_that_stands_there_longest()
    {
        using var lease = places.AttemptAcquire();
        var first = Come();
        var second = Come();
        Assert.Null(await first.WaitAsync(Patience));
        Assert.False(second.IsCompleted);
        Assert.Equal(1, door.Waiting);
    }

    [Fact]
    public async Task Who_stands_at_the_door_goes_in_where_a_place_is_free_again()
    {
        var lease = places.AttemptAcquire();
        var standing = Come();
        door.LetIn();
        Assert.False(standing.IsCompleted);
        lease.Dispose();
        door.LetIn();
        using var pass = await standing.WaitAsync(Patience);
        Assert.NotNull(pass);
        Assert.Equal(0, door.Waiting);
    }

    [Fact]
    public async Task Who_went_in_and_needed_no_place_leaves_it_to_the_next()
    {
        var first = (await Come())!;
        var second = Come();
        first.Dispose();
        using var pass = await second.WaitAsync(Patience);
        Assert.NotNull(pass);
        // To leave twice gives no second place.
        first.Dispose();
        Assert.False(Come().IsCompleted);
    }

    [Fact]
    public async Task Who_has_its_place_keeps_none_for_itself_any_more()
    {
        var first = (await Come())!;
        var lease = places.AttemptAcquire();
        first.Dispose();
        var second = Come();
        Assert.False(second.IsCompleted);
        lease.Dispose();
        door.LetIn();
        Assert.NotNull(await second.WaitAsync(Patience));
    }

    [Fact]
    public async Task Who_stands_there_for_long_goes_in_to_wait_and_whoever_comes_then_is_turned_away()
    {
        using var lease = places.AttemptAcquire();
        var standing = Come();
        Assert.Equal([Doorstep.Longest], hand.Set);
        hand.Ring();
        using var pass = await standing.WaitAsync(Patience);
        Assert.NotNull(pass);
        Assert.Equal(1, door.Waiting);
        Assert.Null(await Come().WaitAsync(Patience));

        // It waits inside now, and counts there.
        var waiting = places.AcquireAsync().AsTask();
        pass.Dispose();
        Assert.Equal(0, door.Waiting);
        Assert.Null(await Come().WaitAsync(Patience));
        lease.Dispose();
        using var place = await waiting.WaitAsync(Patience);
        Assert.True(place.IsAcquired);
    }

    [Fact]
    public async Task Who_leaves_stands_there_no_more()
    {
        using var lease = places.AttemptAcquire();
        using var caller = new CancellationTokenSource();
        var standing = Come(caller.Token);
        await caller.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => standing.WaitAsync(Patience));
        Assert.Equal(0, door.Waiting);
        // Its clock rings for nobody.
        hand.Ring();
        Assert.Equal(0, door.Waiting);
    }

    private Task<Doorstep.Pass?> Come(CancellationToken cancel = default) => door.Come(cancel).AsTask();

    /// <summary>A clock that rings by hand.</summary>
    private sealed class Hand : TimeProvider
    {
        private readonly List<Action> bells = [];

        public List<TimeSpan> Set { get; } = [];

        public void Ring() => bells.ForEach(bell => bell());

        public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
        {
            Set.Add(dueTime);
            bells.Add(() => callback(state));
            return new Bell();
        }

        private sealed class Bell : ITimer
        {
            public bool Change(TimeSpan dueTime, TimeSpan period) => true;

            public void Dispose()
            {
                // It rings by hand only.
            }

            public ValueTask DisposeAsync() => ValueTask.CompletedTask;
        }
    }
}
