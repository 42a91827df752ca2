using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Foods;

/// <summary>What is taken of a table's food of which only its food group is known.</summary>
/// <param name="UsdaGroup">First two digits of its number in the USDA Standard Reference.</param>
/// <param name="Role">What it is taken to do in a formula.</param>
/// <param name="Groups">Every group that it may belong to: what may be a nut goes when nuts go.</param>
public sealed record FoodFamily(string UsdaGroup, Role Role, ImmutableArray<string> Groups);
