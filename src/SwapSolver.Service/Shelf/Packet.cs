using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Panels;

namespace SwapSolver.Service.Shelf;

/// <summary>A packet as it was read; what its panel says is not yet solved.</summary>
/// <param name="Food">The food, without figures.</param>
/// <param name="Like">The ingredient that it is like; null where none was named.</param>
/// <param name="Panel">Its panel.</param>
internal sealed record Packet(StatedFood Food, Ingredient? Like, NutritionPanel Panel);
