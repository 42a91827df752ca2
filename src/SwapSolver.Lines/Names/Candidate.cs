using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Lines.Names;

/// <summary>An ingredient that may be meant.</summary>
/// <param name="Ingredient">The ingredient.</param>
/// <param name="Score">How near its nearest name is, 0 to 1; 1 only for the same words.</param>
public sealed record Candidate(Ingredient Ingredient, double Score);
