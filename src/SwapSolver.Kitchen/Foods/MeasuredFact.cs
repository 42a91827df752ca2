using SwapSolver.Kitchen.Ingredients;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Kitchen.Foods;

/// <summary>A fact that this kitchen measured or knows of its own bag; it goes before the shipped figure, here only.</summary>
/// <param name="IngredientId">The ingredient.</param>
/// <param name="Fact">The fact.</param>
/// <param name="Range">What it may be, in the fact's unit.</param>
/// <param name="Method">How it was found, in a sentence.</param>
public sealed record MeasuredFact(string IngredientId, Fact Fact, Range Range, string Method);
