using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Tables.Columns;

/// <summary>A column that is known.</summary>
/// <param name="Name">Its name in the plain tables.</param>
/// <param name="Fact">The fact that it states; null where it states none that is kept.</param>
/// <param name="IsRequired">Whether no food can do without it.</param>
internal sealed record Column(string Name, Fact? Fact = null, bool IsRequired = false);
