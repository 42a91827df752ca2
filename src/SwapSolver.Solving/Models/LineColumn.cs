using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Solving.Models;

/// <summary>The grams of one ingredient in a model.</summary>
/// <param name="Ingredient">The ingredient.</param>
/// <param name="Column">Its column.</param>
/// <param name="GramsPerUnit">Grams that one unit of the column stands for: 1, a scale step or one egg [g].</param>
/// <param name="Size">The egg size where it is counted; else null.</param>
/// <param name="IsNew">Whether the start has it not.</param>
public sealed record LineColumn(Ingredient Ingredient, int Column, double GramsPerUnit, EggSize? Size, bool IsNew)
{
    /// <summary>The yes-or-no without which the line stays as it is; null where the line is fixed.</summary>
    public int? Choice { get; init; }

    /// <summary>Units of the column where the line stays as it is.</summary>
    public double Start { get; init; }

    /// <summary>Fewest units of the column.</summary>
    public double Low { get; init; }

    /// <summary>Most units of the column.</summary>
    public double High { get; init; }
}
