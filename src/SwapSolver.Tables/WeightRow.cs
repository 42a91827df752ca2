using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Tables;

/// <summary>A household weight that was let in.</summary>
/// <param name="Line">Number of its line in the table, from 1.</param>
/// <param name="FoodId">Id of the food that it is of; <c>usda-12007</c> where the row gives a number.</param>
/// <param name="Measure">The measure and what it weighs.</param>
public sealed record WeightRow(int Line, string FoodId, HouseholdMeasure Measure);
