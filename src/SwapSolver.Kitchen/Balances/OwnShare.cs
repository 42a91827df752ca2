using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>A band in shares of a formula's own reading. A side that is null is open.</summary>
/// <param name="Low">Low end [% of the own reading].</param>
/// <param name="High">High end [% of the own reading].</param>
public sealed record OwnShare(Percent? Low, Percent? High)
{
    /// <summary>The band of a formula with this reading; open where it has none.</summary>
    public Band Of(Level? own) => own is { } level
        ? new Band(
            Low is { } low ? new Level(level.Value * low.Share) : null,
            High is { } high ? new Level(level.Value * high.Share) : null)
        : Band.Open;
}
