using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Acids;

/// <summary>A sour food: how much acid it holds is the ingredient's own fact; how it gives it, stands here.</summary>
/// <param name="Id">Id of the ingredient.</param>
/// <param name="Taste">How it tastes in a crumb.</param>
/// <param name="Acid">Its acid; null where several things buffer evenly, as in cultured dairy.</param>
/// <param name="NativePh">pH of the food by itself [pH].</param>
/// <param name="Timing">When it frees its gas.</param>
public sealed record FoodAcid(string Id, string Taste, Dissociation? Acid, Figure NativePh, AcidTiming Timing)
    : Leavener(Id, Taste);
