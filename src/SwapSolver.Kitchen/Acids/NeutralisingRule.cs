namespace SwapSolver.Kitchen.Acids;

/// <summary>Which of two neutralising values counts.</summary>
public enum NeutralisingRule
{
    /// <summary>The one computed from molar mass and protons.</summary>
    Computed,

    /// <summary>The published one: counting protons does not hold.</summary>
    Published,
}
