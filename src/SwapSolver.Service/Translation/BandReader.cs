using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Service.Faults;

namespace SwapSolver.Service.Translation;

/// <summary>Reads the two ends of where a reading is wanted.</summary>
internal sealed class BandReader(ProblemList problems)
{
    private const double Most = 1_000_000;

    /// <summary>The band; null where it is none, and then a problem was added.</summary>
    /// <param name="name">What the reading was called.</param>
    /// <param name="low">Low end; null where not given.</param>
    /// <param name="high">High end; null where not given.</param>
    /// <param name="path">The field that holds both.</param>
    public Band? Read(string name, double? low, double? high, string path)
    {
        if (low is null && high is null)
        {
            problems.Add(path, name, "has neither low nor high", "give at least one of them");
            return null;
        }

        var before = problems.Count;
        var floor = Bound(low, $"{path}.low");
        var ceiling = Bound(high, $"{path}.high");
        if (floor is { } one && ceiling is { } other && one.Value > other.Value)
        {
            problems.Add($"{path}.low", one.Value, $"is above the high of {other.Value}", "give a low that is not above the high");
        }

        return problems.Count == before ? new Band(floor, ceiling) : null;
    }

    private Level? Bound(double? value, string path)
    {
        if (value is null or (>= 0 and <= Most))
        {
            return value is { } level ? new Level(level) : null;
        }

        problems.Add(path, value.Value, "is no limit of a reading", "give 0 or more");
        return null;
    }
}
