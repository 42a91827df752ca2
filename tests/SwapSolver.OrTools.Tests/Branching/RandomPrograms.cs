using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools.Tests.Branching;

/// <summary>Small programs by number: the same number gives the same one. Costs, limits and rows of all kinds, some of which cannot be met.</summary>
internal static class RandomPrograms
{
    private const double Open = double.PositiveInfinity;

    /// <summary>A program in which every column takes any value.</summary>
    public static Model Linear(int number)
    {
        var random = new Random(number);
        var columns = Enumerable.Range(0, 3 + random.Next(12)).Select(index =>
        {
            var low = random.Next(3) == 0 ? 0 : random.Next(-20, 20);
            // Some are fixed, some grow without end at a cost, and most have room.
            return random.Next(8) switch
            {
                0 => new Column($"c{index}", low, low, false, random.Next(-5, 6)),
                1 => new Column($"c{index}", low, Open, false, 1 + random.NextDouble()),
                _ => new Column($"c{index}", low, low + random.Next(1, 300), false, Math.Round(random.NextDouble() * 4, 3) - 2),
            };
        }).ToList();
        return new Model(columns, Rows(random, columns, 2 + random.Next(10)));
    }

    /// <summary>A program of a few whole columns, small enough to try every point.</summary>
    public static Model Whole(int number)
    {
        var random = new Random(number);
        var columns = Enumerable.Range(0, 6).Select(index => new Column($"c{index}", 0, 1 + random.Next(3), true, random.Next(-9, 10) / 4.0)).ToList();
        return new Model(columns, Rows(random, columns, 1 + random.Next(4)));
    }

    private static List<ModelRow> Rows(Random random, List<Column> columns, int count) => [.. Enumerable.Range(0, count).Select(index =>
    {
        var terms = Enumerable.Range(0, columns.Count).Where(_ => random.Next(2) == 0).Select(column => new Term(column, random.Next(-8, 9) / 4.0)).ToList();
        // About a point within the limits, so that most can be met; some are moved away from it.
        var sum = terms.Sum(term => term.Coefficient * Math.Round(columns[term.Column].Low + (random.NextDouble() * Math.Min(20, columns[term.Column].High - columns[term.Column].Low))));
        sum += random.Next(6) == 0 ? random.Next(-40, 40) : 0;
        return random.Next(4) switch
        {
            0 => new ModelRow($"r{index}", terms, sum, sum),
            1 => new ModelRow($"r{index}", terms, double.NegativeInfinity, sum),
            2 => new ModelRow($"r{index}", terms, sum, Open),
            _ => new ModelRow($"r{index}", terms, sum - 3, sum + 2),
        };
    })];
}
