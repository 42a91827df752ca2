namespace SwapSolver.Console.Asking;

/// <summary>Says everything that is wrong with an input, up to what a person reads.</summary>
internal static class ProblemList
{
    private const int MostShown = 20;

    /// <summary>Writes the problems to standard error.</summary>
    public static void Write(IReadOnlyList<string> problems)
    {
        foreach (var problem in problems.Take(MostShown))
        {
            ErrorOutput.Write(problem);
        }

        if (problems.Count > MostShown)
        {
            ErrorOutput.WriteMore($"and {problems.Count - MostShown} more.");
        }
    }
}
