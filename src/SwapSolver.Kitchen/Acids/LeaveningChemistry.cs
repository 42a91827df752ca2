using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Acids;

/// <summary>Everything that is known of acids, bases, powders and the buffers of foods, from <c>data/acids/</c> and <c>data/chemistry/</c>.</summary>
/// <param name="Constants">Constants of watery solutions.</param>
/// <param name="Ions">Ions by id.</param>
/// <param name="Dissociations">Dissociating things by id.</param>
/// <param name="Leaveners">Acids, bases and powders by id.</param>
/// <param name="Buffers">Buffers of foods by the id of the ingredient.</param>
/// <param name="Guess">What is taken for a food without a row.</param>
public sealed record LeaveningChemistry(
    WaterChemistry Constants,
    FrozenDictionary<string, Ion> Ions,
    FrozenDictionary<string, Dissociation> Dissociations,
    FrozenDictionary<string, Leavener> Leaveners,
    FrozenDictionary<string, FoodBuffer> Buffers,
    BufferGuess Guess)
{
    /// <summary>Finds what is known of an ingredient as an acid, a base or a powder.</summary>
    public bool TryGet(Ingredient ingredient, [NotNullWhen(true)] out Leavener? leavener) =>
        Leaveners.TryGetValue(ingredient.Id, out leavener);
}
