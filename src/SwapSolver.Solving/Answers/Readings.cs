using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Answers;

/// <summary>Reads balances of a formula.</summary>
public static class Readings
{
    /// <summary>The readings of a formula against a reference's bands; a balance without a basis has none.</summary>
    /// <param name="balances">The balances to read.</param>
    /// <param name="holds">The wishes that narrow or replace default bands.</param>
    /// <param name="formula">The formula that is read.</param>
    /// <param name="reference">The formula that bases are counted on.</param>
    /// <param name="samples">Samples of the facts of both; null where a reading is to have no range.</param>
    public static ImmutableArray<Reading> Of(
        IEnumerable<Balance> balances,
        ImmutableArray<Hold> holds,
        Formula formula,
        Formula reference,
        FactSamples? samples)
    {
        var readings = ImmutableArray.CreateBuilder<Reading>();
        foreach (var balance in balances)
        {
            if (balance.CanRead(formula) && balance.CanRead(reference) && balance.Read(formula, reference, Draws.Typical) is { } value)
            {
                var (low, high) = samples?.SpreadOf(balance, formula, reference) ?? (value, value);
                readings.Add(new Reading(balance, value, low, high, BandOf(balance, holds)));
            }
        }

        return readings.DrainToImmutable();
    }

    /// <summary>What is told where something must be kept: the ratios, and whatever else is held, each once.</summary>
    /// <param name="ratios">The ratios.</param>
    /// <param name="holds">What must be kept; that something is left out is no reading.</param>
    internal static IReadOnlyList<Balance> Told(ImmutableArray<Balance> ratios, ImmutableArray<Hold> holds)
    {
        var told = new List<Balance>(ratios);
        foreach (var hold in holds)
        {
            if (hold.Balance is not LeftOut && !told.Contains(hold.Balance))
            {
                told.Add(hold.Balance);
            }
        }

        return told;
    }

    /// <summary>Ids of the readings that lie at an end of their band, within a twentieth of its width.</summary>
    public static ImmutableArray<string> Binding(ImmutableArray<Reading> readings) =>
        [.. readings.Where(IsAtAnEnd).Select(reading => reading.Balance.Id)];

    private static Band BandOf(Balance balance, ImmutableArray<Hold> holds)
    {
        var band = Band.Open;
        foreach (var hold in holds)
        {
            if (hold.Balance == balance)
            {
                band = band.And(hold.Band);
            }
        }

        return band;
    }

    private static bool IsAtAnEnd(Reading reading)
    {
        if (reading.Band.IsOpen || reading.Standing != Standing.Inside)
        {
            return false;
        }

        var low = reading.Band.Low?.Value;
        var high = reading.Band.High?.Value;
        var width = (high ?? reading.Value.Value * 1.2) - (low ?? 0);
        var near = width / 20;
        return (low is { } floor && floor > 0 && reading.Value.Value <= floor + near)
            || (high is { } ceiling && reading.Value.Value >= ceiling - near);
    }
}
