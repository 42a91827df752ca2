namespace SwapSolver.Forecasts;

/// <summary>How the gas of a batter is freed, minute by minute [mmol].</summary>
/// <param name="Portions">Acid and soda.</param>
/// <param name="Mixing">Time of mixing [min].</param>
/// <param name="Bench">Time on the bench [min]; infinite where no oven waits.</param>
/// <param name="Oven">Time in the oven [min].</param>
/// <param name="StandardBench">Time that the bench share of an acid is stated for [min].</param>
/// <param name="Doubts">Which figure is moved.</param>
internal sealed record GasRelease(
    LeaveningPortions Portions, double Mixing, double Bench, double Oven, double StandardBench, Doubts Doubts)
{
    /// <summary>Gas that heat alone frees, if the batter goes into the oven at all [mmol].</summary>
    public double ByHeat { get; } = Portions.LeftShare * Portions.Sodas.Sum(soda => soda.Millimoles * soda.FreedByHeat);

    /// <summary>All gas that will be freed [mmol].</summary>
    public double Total => Portions.Neutralised + ByHeat;

    /// <summary>Gas freed by a time since the soda was wetted [mmol].</summary>
    public double By(double minute) => ByAcid(minute) + (ByHeat * OvenShare(minute));

    /// <summary>Of it, what acid has freed [mmol].</summary>
    public double ByAcid(double minute) =>
        Math.Min(Portions.Acids.Sum(portion => portion.Equivalents * ReactedShare(portion, minute)), Portions.Soda);

    private double ReactedShare(AcidPortion portion, double minute)
    {
        var mixed = portion.MixedShare(Doubts);
        if (minute <= Mixing)
        {
            return mixed * minute / Mixing;
        }

        // On a longer bench than the stated one the same pace is taken to go on.
        var pace = (portion.Timing is { } timing ? timing.BenchPercent.Range.Typical / 100 : 0) / StandardBench;
        var onBench = Math.Min(minute - Mixing, Bench);
        var reacted = Math.Min(1, mixed + (pace * onBench));
        return reacted + ((1 - reacted) * OvenShare(minute));
    }

    private double OvenShare(double minute) => Math.Clamp((minute - Mixing - Bench) / Oven, 0, 1);
}
