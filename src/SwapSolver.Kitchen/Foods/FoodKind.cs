using System.Collections.Immutable;

namespace SwapSolver.Kitchen.Foods;

/// <summary>A food that a table's row can only mean by its name, whoever prints the table.</summary>
/// <param name="Names">Its names, each as a set of words.</param>
/// <param name="Like">Id of the shipped ingredient that it is.</param>
public sealed record FoodKind(ImmutableArray<ImmutableHashSet<string>> Names, string Like);
