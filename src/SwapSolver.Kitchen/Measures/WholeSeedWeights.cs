using System.Collections.Immutable;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Measures;

/// <summary>Flours and meals of which the table has weighed the whole seed only. Ground, a cup of it weighs less.</summary>
/// <param name="Ids">Ids of these ingredients.</param>
/// <param name="LeastGround">Least that a cup of the ground seed weighs, of a cup of the whole one [%].</param>
public sealed record WholeSeedWeights(ImmutableHashSet<string> Ids, Percent LeastGround)
{
    /// <summary>The form of a line that means the whole seed.</summary>
    private const string WholeForm = "whole";

    /// <summary>Whether a measure of an ingredient is of the ground seed and known only of the whole one.</summary>
    /// <param name="ingredientId">Id of the ingredient.</param>
    /// <param name="measured">The measure.</param>
    public bool Mislead(string ingredientId, Measured measured) =>
        Ids.Contains(ingredientId) && !measured.UsualForm.Contains(WholeForm) && !measured.Words.Contains(WholeForm);
}
