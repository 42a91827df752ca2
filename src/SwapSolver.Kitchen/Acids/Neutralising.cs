using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Acids;

/// <summary>What is published of an acid's neutralising value, and whether it counts.</summary>
/// <param name="PublishedGPer100G">The published values [g soda/100 g]; null where none was found.</param>
/// <param name="Rule">Which value counts.</param>
/// <param name="Why">The reason, in one sentence.</param>
public sealed record Neutralising(Figure? PublishedGPer100G, NeutralisingRule Rule, string Why);
