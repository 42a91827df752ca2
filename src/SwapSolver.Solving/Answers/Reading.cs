using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Answers;

/// <summary>The value of one balance for one formula.</summary>
/// <param name="Balance">The balance.</param>
/// <param name="Value">Value with the typical facts.</param>
/// <param name="Low">Low end over the ranges of the facts.</param>
/// <param name="High">High end over the ranges of the facts.</param>
/// <param name="Band">The band that it is judged by.</param>
public sealed record Reading(Balance Balance, Level Value, Level Low, Level High, Band Band)
{
    /// <summary>Where the value stands against the band.</summary>
    public Standing Standing => Band.Of(Value);

    /// <summary>What a baker would notice; empty where the reading is inside.</summary>
    public string Meaning => Standing switch
    {
        Standing.Below => Balance.Settings.BelowMeans,
        Standing.Above => Balance.Settings.AboveMeans,
        _ => string.Empty,
    };
}
