using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Labels;

/// <summary>What a law asks of the claim that a food is free of gluten. The claim itself is never made here.</summary>
/// <param name="ClaimOf">What the claim asks for, in words.</param>
/// <param name="Law">Where that stands.</param>
/// <param name="AsOf">When it is from.</param>
/// <param name="Source">Key of the source.</param>
/// <param name="Mark">How it is known.</param>
public sealed record GlutenRule(string ClaimOf, string Law, string AsOf, string Source, Mark Mark);
