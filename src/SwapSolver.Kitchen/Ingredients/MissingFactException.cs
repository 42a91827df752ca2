namespace SwapSolver.Kitchen.Ingredients;

/// <summary>A rule asked for a fact that an ingredient lacks. The pantry refuses such ingredients at its door,
/// so this is a fault of ours, not of the caller.</summary>
public sealed class MissingFactException : Exception
{
    /// <summary>Makes the fault.</summary>
    public MissingFactException(string ingredientId, Fact fact)
        : base($"'{ingredientId}' has no {fact.Id}: a fact that is not known is not zero.")
    {
    }
}
