namespace SwapSolver.Forecasts.Tests;

public sealed class WallRowsTests
{
    /// <summary>Walls at random between cells at random: a row of several at once is no other than each wall by itself, whatever lies between them.</summary>
    [Fact]
    public void Heat_through_walls_in_rows_is_that_through_each_wall_by_itself()
    {
        var chance = new Random(20261128);
        for (var loaf = 0; loaf < 200; loaf++)
        {
            var cells = chance.Next(2, 60);
            List<(int One, int Other, double Way)> walls =
            [
                .. from one in Enumerable.Range(0, cells)
                   from apart in new[] { 1, 5, 12 }
                   where one + apart < cells && chance.NextDouble() < 0.7
                   select (one, one + apart, chance.NextDouble() + 0.1),
            ];
            double[] Any(double most) => [.. Enumerable.Range(0, cells).Select(_ => most * chance.NextDouble())];
            var (celsius, water, outward, inward) = (Any(200), Any(400), Any(10), Any(10));
            var (gain, give) = (new double[cells], new double[cells]);
            var rows = new WallRows(walls);
            rows.Conduct(celsius, water, outward, inward, gain, give, new double[rows.Longest], new double[rows.Longest]);

            var (gains, gives) = (new double[cells], new double[cells]);
            foreach (var (one, other, way) in walls)
            {
                // Half of each cell, on the side of the skin in the wetter of the two: the drier lies outward.
                var resistivity = (water[other] < water[one] ? outward[one] : inward[one]) + (water[one] < water[other] ? outward[other] : inward[other]);
                var exchange = way / (resistivity / 2);
                gains[one] += exchange * (celsius[other] - celsius[one]);
                gains[other] -= exchange * (celsius[other] - celsius[one]);
                gives[one] += exchange;
                gives[other] += exchange;
            }

            Assert.All(Enumerable.Range(0, cells), cell =>
            {
                Assert.Equal(gains[cell], gain[cell], 1e-9 * Math.Max(1, gives.Max() * 200));
                Assert.Equal(gives[cell], give[cell], 1e-9 * Math.Max(1, gives.Max()));
            });
        }
    }
}
