using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Solving.Answers;

/// <summary>A fact that decides whether a formula balances.</summary>
/// <param name="Ingredient">The ingredient.</param>
/// <param name="Fact">The fact.</param>
/// <param name="Share">How much of the doubt it explains by itself, 0 to 1.</param>
/// <param name="Words">The fact in kitchen words, and how to know it better.</param>
public sealed record DecisiveFact(Ingredient Ingredient, Fact Fact, double Share, string Words);
