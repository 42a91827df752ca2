namespace SwapSolver.Kitchen.Ingredients;

/// <summary>What an ingredient does in the bowl or the oven.</summary>
/// <param name="Kind">Id of the kind, as <c>greens-with-alkali</c>.</param>
/// <param name="Note">One plain sentence for a baker.</param>
/// <param name="Source">Key of the source.</param>
/// <param name="Mark">How it is known.</param>
public sealed record Behaviour(string Kind, string Note, string Source, Mark Mark);
