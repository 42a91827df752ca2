using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools.Tests;

/// <summary>Market-split models: yes-or-no columns under a few equalities with large coefficients, with a slack each.
/// Even small ones take branch-and-bound far longer than any budget here; that is from memory, and the test does not rest on it.</summary>
internal static class HardModel
{
    /// <summary>A market-split model.</summary>
    /// <param name="rows">Equalities.</param>
    /// <param name="columns">Yes-or-no columns.</param>
    public static Model Of(int rows, int columns)
    {
        var random = new Random(7);
        var unknowns = Enumerable.Range(0, columns).Select(index => new Column($"split_{index}", 0, 1, true, 0))
            .Concat(Enumerable.Range(0, rows).SelectMany(row => new[]
            {
                new Column($"over_{row}", 0, 1e6, false, 1), new Column($"under_{row}", 0, 1e6, false, 1),
            }));
        var equalities = Enumerable.Range(0, rows).Select(row =>
        {
            var shares = Enumerable.Range(0, columns).Select(index => new Term(index, random.Next(100))).ToList();
            var half = Math.Floor(shares.Sum(term => term.Coefficient) / 2);
            return new ModelRow(
                $"market_{row}", [.. shares, new(columns + (2 * row), 1), new(columns + (2 * row) + 1, -1)], half, half);
        });
        return new Model([.. unknowns], [.. equalities]);
    }
}
