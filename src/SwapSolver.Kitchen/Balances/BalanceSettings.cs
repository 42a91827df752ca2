using System.Collections.Immutable;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>What the data file of a balance says: its band and its words.</summary>
/// <param name="Id">Id of the balance, as <c>hydration</c>.</param>
/// <param name="Title">The balance in kitchen words.</param>
/// <param name="Unit">Unit of its readings.</param>
/// <param name="Fixed">Fixed limits; open sides where there are none.</param>
/// <param name="Below">Share of the reference's own reading that the low end lies at, as 0.94; null where the reference sets none.</param>
/// <param name="Above">Share of the reference's own reading that the high end lies at, as 1.06; null where the reference sets none.</param>
/// <param name="WhenReferenceHasNone">High end where the reference's reading is zero and a share of it would be nothing; null for none.</param>
/// <param name="BelowMeans">What a baker notices when the reading is too low.</param>
/// <param name="AboveMeans">What a baker notices when the reading is too high.</param>
/// <param name="Sources">Keys of the sources.</param>
public sealed record BalanceSettings(
    string Id,
    string Title,
    string Unit,
    Band Fixed,
    Percent? Below,
    Percent? Above,
    Level? WhenReferenceHasNone,
    string BelowMeans,
    string AboveMeans,
    ImmutableArray<string> Sources)
{
    /// <summary>What goes with the wish to move the reading.</summary>
    public TargetHabits Target { get; init; } = TargetHabits.None;

    /// <summary>The band around the reference's own reading: the loaf that is known to work is the anchor.</summary>
    /// <param name="own">The reference's reading; null where it has none.</param>
    public Band Around(Level? own)
    {
        if (own is not { } reading)
        {
            return Band.Open;
        }

        if (reading.Value == 0 && WhenReferenceHasNone is { } most)
        {
            return new Band(new Level(0), most);
        }

        return new Band(
            Below is { } below ? new Level(reading.Value * below.Share) : null,
            Above is { } above ? new Level(reading.Value * above.Share) : null);
    }
}
