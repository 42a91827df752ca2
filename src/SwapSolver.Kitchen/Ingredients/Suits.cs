namespace SwapSolver.Kitchen.Ingredients;

/// <summary>Who can eat an ingredient, by its nature.</summary>
/// <param name="Vegan">Nothing from animals.</param>
/// <param name="Vegetarian">No meat, fish or gelatine.</param>
/// <param name="GlutenFree">No gluten grain.</param>
public sealed record Suits(bool Vegan, bool Vegetarian, bool GlutenFree);
