namespace SwapSolver.Benchmarks.Race;

/// <summary>A solver in the race.</summary>
public interface IRunner : IDisposable
{
    /// <summary>Most time for a model [s].</summary>
    const int MostSeconds = 20;

    /// <summary>Its name.</summary>
    string Name { get; }

    /// <summary>Solves a question to a proven optimum.</summary>
    /// <param name="question">The question.</param>
    /// <param name="file">Its model as text, without the ending: <c>.mps</c> and <c>.lp</c> lie there.</param>
    Finish Run(FixedQuestion question, string file);
}
