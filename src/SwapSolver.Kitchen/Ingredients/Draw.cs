namespace SwapSolver.Kitchen.Ingredients;

/// <summary>Which sheet of an ingredient is looked at.</summary>
/// <param name="ingredient">The ingredient.</param>
public delegate FactSheet Draw(Ingredient ingredient);
