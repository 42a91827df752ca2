namespace SwapSolver.Loaves.IndependentSolvers;

/// <summary>The stand-alone CBC of the system's own packages, told to leave no gap.</summary>
public static class CbcProgram
{
    private const string Optimal = "Optimal - objective value";

    /// <summary>What it says of a free MPS file.</summary>
    public static Verdict Judge(string mpsFile)
    {
        var written = $"{mpsFile}.cbc";
        var said = NativeProgram.Run(
            "cbc", mpsFile, "-ratioGap", "0", "-allowableGap", "0", "-solve", "-solution", written);
        var head = File.ReadLines(written).First();
        return head.StartsWith(Optimal, StringComparison.Ordinal) ? Verdict.Optimal(head[Optimal.Length..])
            : head.StartsWith("Infeasible", StringComparison.Ordinal) || head.StartsWith("Integer infeasible", StringComparison.Ordinal)
                ? Verdict.Infeasible
                : throw new InvalidOperationException($"cbc said '{head}' and:\n{said}");
    }
}
