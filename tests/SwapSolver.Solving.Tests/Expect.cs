namespace SwapSolver.Solving.Tests;

/// <summary>Says every fault in full where there should be none.</summary>
internal static class Expect
{
    /// <summary>Fails with all faults, one a line.</summary>
    public static void None(IEnumerable<string> faults)
    {
        var all = faults.ToList();
        Assert.True(all.Count == 0, $"{all.Count} faults:\n{string.Join('\n', all)}");
    }
}
