using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Acids;

/// <summary>When an acid frees its gas, as shares of all that it frees. The three typical shares add up to a hundred.</summary>
/// <param name="MixingPercent">While mixing, two to three minutes [%].</param>
/// <param name="BenchPercent">On the bench, within ten to fifteen minutes after mixing [%].</param>
/// <param name="OvenPercent">In the oven [%].</param>
public sealed record AcidTiming(Figure MixingPercent, Figure BenchPercent, Figure OvenPercent);
