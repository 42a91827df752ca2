using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Learning;

/// <summary>A fact that a kitchen can learn.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Title">What it is, in words.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Published">What is known before.</param>
/// <param name="Possible">What is physically possible.</param>
/// <param name="Scatter">By how much one measurement scatters: standard deviation, as a share of the published typical value.</param>
public sealed record LearnableFact(string Id, string Title, string Unit, Range Published, Range Possible, double Scatter)
{
    /// <summary>What is believed before anything was measured.</summary>
    public Belief Before => Belief.Before(Published, Possible);

    /// <summary>A measurement of it.</summary>
    public Evidence Measured(double value) => new(value, Scatter * Published.Typical);
}
