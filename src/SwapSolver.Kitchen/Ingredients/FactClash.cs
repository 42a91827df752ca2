namespace SwapSolver.Kitchen.Ingredients;

/// <summary>Figures of one food that cannot be true together.</summary>
/// <param name="Fact">The figure to look at first.</param>
/// <param name="Reason">What is wrong, with the figures that clash.</param>
public sealed record FactClash(Fact Fact, string Reason);
