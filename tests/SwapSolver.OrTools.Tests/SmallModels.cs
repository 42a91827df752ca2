using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools.Tests;

/// <summary>Models that are solved by hand where they are used.</summary>
internal static class SmallModels
{
    private const double Open = double.PositiveInfinity;

    /// <summary>Three jars, a shelf that bears 7.</summary>
    public static Model Knapsack { get; } = new(
        [new("a", 0, 1, true, -4), new("b", 0, 1, true, -5), new("c", 0, 1, true, -6)],
        [new("shelf", [new(0, 3), new(1, 4), new(2, 5)], -Open, 7)]);

    /// <summary>Ten grams out of two jars that cost to open.</summary>
    public static Model FixedCharge { get; } = new(
        [
            new("grams_a", 0, 8, false, 1), new("open_a", 0, 1, true, 5),
            new("grams_b", 0, 20, false, 0.5), new("open_b", 0, 1, true, 12),
        ],
        [
            new("needed", [new(0, 1), new(2, 1)], 10, Open),
            new("jar_a", [new(0, 1), new(1, -8)], -Open, 0),
            new("jar_b", [new(2, 1), new(3, -20)], -Open, 0),
        ]);

    /// <summary>At least 5 out of twice at most 2.</summary>
    public static Model TooFew { get; } = new(
        [new("x", 0, 2, false, 1), new("y", 0, 2, false, 1)],
        [new("needed", [new(0, 1), new(1, 1)], 5, Open)]);

    /// <summary>Twice a whole number is three.</summary>
    public static Model OddPairs { get; } = new([new("n", 0, 9, true, 1)], [new("three", [new(0, 2)], 3, 3)]);

    /// <summary>Sum 10, difference 2.</summary>
    public static Model TwoEqualities { get; } = new(
        [new("x", 0, 100, false, 1), new("y", 0, 100, false, 1)],
        [new("sum", [new(0, 1), new(1, 1)], 10, 10), new("difference", [new(0, 1), new(1, -1)], 2, 2)]);

    /// <summary>Nothing, or 10 to 50, and at least so much.</summary>
    public static Model SemiContinuous(double needed) => new(
        [new("x", 0, 50, false, 1), new("used", 0, 1, true, 0)],
        [
            new("needed", [new(0, 1)], needed, Open),
            new("least", [new(0, 1), new(1, -10)], 0, Open),
            new("most", [new(0, 1), new(1, -50)], -Open, 0),
        ]);
}
