using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Solving.Models;

/// <summary>The grams of one ingredient in a model.</summary>
/// <param name="Ingredient">The ingredient.</param>
/// <param name="Column">Its column.</param>
/// <param name="GramsPerUnit">Grams that one unit of the column stands for: 1, a scale step or one egg [g].</param>
/// <param name="Size">The egg size where it is counted; else null.</param>
/// <param name="IsNew">Whether the start has it not.</param>
public sealed record LineColumn(Ingredient Ingredient, int Column, double GramsPerUnit, EggSize? Size, bool IsNew);
