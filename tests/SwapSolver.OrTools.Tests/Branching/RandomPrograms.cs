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

    /// <summary>A bowl: grams that are nothing or at least so many, each with a price for being there, that make a given mass and keep
    /// some sums within bands.</summary>
    public static Model Bowl(int number)
    {
        const int Lines = 10;
        var random = new Random(number);
        List<Column> columns = [];
        List<ModelRow> rows = [];
        for (var line = 0; line < Lines; line++)
        {
            columns.Add(new Column($"grams_{line}", 0, 100, false, Math.Round(random.NextDouble() / 10, 3)));
            columns.Add(new Column($"used_{line}", 0, 1, true, 1 + random.Next(5)));
            rows.Add(new ModelRow($"least_{line}", [new(2 * line, 1), new((2 * line) + 1, -5)], 0, Open));
            rows.Add(new ModelRow($"most_{line}", [new(2 * line, 1), new((2 * line) + 1, -100)], double.NegativeInfinity, 0));
        }

        rows.Add(new ModelRow("mass", [.. Enumerable.Range(0, Lines).Select(line => new Term(2 * line, 1))], 300, 300));
        for (var sum = 0; sum < 4; sum++)
        {
            var shares = Enumerable.Range(0, Lines).Select(line => new Term(2 * line, random.Next(100) / 100.0)).ToList();
            // Up to a third off what even amounts would give, which not every bowl can be brought to.
            var middle = shares.Average(term => term.Coefficient) * 300 * (2 + (2 * random.NextDouble())) / 3;
            rows.Add(new ModelRow($"sum_{sum}", shares, middle * 0.97, middle * 1.03));
        }

        return new Model(columns, rows);
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
