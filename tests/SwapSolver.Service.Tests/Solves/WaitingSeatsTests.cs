using SwapSolver.Service.Solves;

namespace SwapSolver.Service.Tests.Solves;

public sealed class WaitingSeatsTests
{
    private static readonly TimeSpan Instant = TimeSpan.FromTicks(1);

    private readonly Hand hand = new();

    private readonly WaitingSeats seats;

    public WaitingSeatsTests() => seats = new WaitingSeats(hand);

    [Fact]
    public void Who_just_sat_down_is_not_sent_away()
    {
        using var seat = seats.Take(CancellationToken.None);
        hand.Now += WaitingSeats.Least - Instant;
        Assert.False(seats.TryFree());
        Assert.False(seat.IsFreed || seat.Token.IsCancellationRequested);
    }

    [Fact]
    public void Who_can_still_be_told_promptly_is_sent_away_once()
    {
        using var seat = seats.Take(CancellationToken.None);
        hand.Now += WaitingSeats.Least;
        Assert.True(seats.TryFree());
        Assert.True(seat.IsFreed && seat.Token.IsCancellationRequested);
        Assert.False(seats.TryFree());
    }

    [Fact]
    public void Who_has_waited_for_long_keeps_the_seat()
    {
        using var seat = seats.Take(CancellationToken.None);
        hand.Now += WaitingSeats.Most + Instant;
        Assert.False(seats.TryFree());
        Assert.False(seat.IsFreed);
    }

    [Fact]
    public void Of_several_the_one_goes_that_waits_longest()
    {
        using var first = seats.Take(CancellationToken.None);
        hand.Now += Instant;
        using var second = seats.Take(CancellationToken.None);
        hand.Now += WaitingSeats.Least;
        Assert.True(seats.TryFree());
        Assert.Equal((true, false), (first.IsFreed, second.IsFreed));
    }

    [Fact]
    public void Who_has_a_place_by_now_has_no_seat_to_lose()
    {
        var seat = seats.Take(CancellationToken.None);
        hand.Now += WaitingSeats.Least;
        seat.Dispose();
        Assert.False(seats.TryFree());
    }

    [Fact]
    public void A_call_that_ends_waits_no_longer()
    {
        using var call = new CancellationTokenSource();
        using var seat = seats.Take(call.Token);
        call.Cancel();
        Assert.True(seat.Token.IsCancellationRequested);
        Assert.False(seat.IsFreed);
    }

    /// <summary>A clock that is moved by hand.</summary>
    private sealed class Hand : TimeProvider
    {
        public TimeSpan Now { get; set; }

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override long GetTimestamp() => Now.Ticks;
    }
}
