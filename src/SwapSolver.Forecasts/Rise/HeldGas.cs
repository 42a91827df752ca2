namespace SwapSolver.Forecasts;

/// <summary>What a batter holds of its gas while it is mixed and stands: it leaks at a pace that halves it in a half-life. In the oven the crust and the thickening crumb keep it.</summary>
/// <param name="Release">How it is freed.</param>
/// <param name="HalfLife">Time in which half of what is held leaks [min].</param>
internal sealed record HeldGas(GasRelease Release, double HalfLife)
{
    /// <summary>Step of the count [min].</summary>
    private const double Step = 0.05;

    private double Leak => Math.Log(2) / HalfLife;

    /// <summary>Gas held at each of some times in rising order [mmol].</summary>
    public IEnumerable<double> At(IEnumerable<double> minutes)
    {
        var (now, held) = (0.0, 0.0);
        foreach (var minute in minutes)
        {
            while (now < minute)
            {
                var next = Math.Min(now + Step, minute);
                held = Next(now, next, held);
                now = next;
            }

            yield return held;
        }
    }

    /// <summary>Time after mixing at which a share of the gas that could still lift the crumb has leaked; the longest where it never does [min].</summary>
    /// <param name="share">The share [1], above 0.</param>
    /// <param name="longest">Longest time that is looked at [min].</param>
    public double UntilLost(double share, double longest)
    {
        var (held, freedInMixing) = (At([Release.Mixing]).Single(), Release.By(Release.Mixing));
        var bears = share * (held + Release.Total - freedInMixing);
        var lost = 0.0;
        for (var waited = 0.0; waited < longest; waited += Step)
        {
            var now = Release.Mixing + waited;
            var next = Next(now, now + Step, held);
            var leaked = held + Release.By(now + Step) - Release.By(now) - next;
            if (lost + leaked >= bears)
            {
                return waited + (Step * (bears - lost) / leaked);
            }

            (lost, held) = (lost + leaked, next);
        }

        return longest;
    }

    private double Next(double now, double next, double held)
    {
        var freed = Release.By(next) - Release.By(now);
        if (now >= Release.Mixing + Release.Bench)
        {
            return held + freed;
        }

        // Exact for a steady flow within the step.
        var passed = Leak * (next - now);
        var kept = Math.Exp(-passed);
        return (held * kept) + (freed * (1 - kept) / passed);
    }
}
