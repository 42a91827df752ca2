using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools.Tests;

/// <summary>Models with one number that no native solver may be given, each by the name of its fault.</summary>
public static class BrokenModels
{
    private const double Open = double.PositiveInfinity;

    internal static IReadOnlyDictionary<string, Model> ByName { get; } = new Dictionary<string, Model>
    {
        ["low is no number"] = Of(Whole with { Low = double.NaN }),
        ["high is no number"] = Of(Whole with { High = double.NaN }),
        ["cost is no number"] = Of(Whole with { Cost = double.NaN }),
        ["cost is endless"] = Of(Whole with { Cost = Open }),
        ["limits are crossed"] = Of(Whole with { Low = 2, High = 1 }),
        ["low is endlessly high"] = Of(Whole with { Low = Open, High = Open }),
        ["high is endlessly low"] = Of(Whole with { Low = -Open, High = -Open }),
        ["high is too large a number"] = Of(Whole with { High = 1e13 }),
        ["a coefficient is no number"] = Of(Sum with { Terms = [new(0, double.NaN)] }),
        ["a coefficient is endless"] = Of(Sum with { Terms = [new(0, Open)] }),
        ["a term names a column that is not there"] = Of(Sum with { Terms = [new(1, 1)] }),
        ["a term names a column below the first"] = Of(Sum with { Terms = [new(-1, 1)] }),
        ["a row's low is no number"] = Of(Sum with { Low = double.NaN }),
        ["a row's limits are crossed"] = Of(Sum with { Low = 5, High = 4 }),
        ["a row's low is endlessly high"] = Of(Sum with { Low = Open, High = Open }),
        ["a row's high is endlessly low"] = Of(Sum with { Low = -Open, High = -Open }),
    };

    /// <summary>The names of the faults.</summary>
    public static TheoryData<string> All => [.. ByName.Keys];

    private static Column Whole => new("x", 0, 1, false, 1);

    private static ModelRow Sum => new("sum", [new(0, 1)], 0, 1);

    private static Model Of(Column column) => new([column], [Sum]);

    private static Model Of(ModelRow row) => new([Whole], [row]);
}
