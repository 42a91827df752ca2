using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Cards;

/// <summary>One line of a card.</summary>
/// <param name="Line">The line in grams.</param>
/// <param name="BakersPercentage">Grams by the mass of all flours [%]; null where the formula has no flour.</param>
/// <param name="Measure">The household measure that comes near; null where none was asked for or none is known.</param>
public sealed record CardLine(Line Line, Percent? BakersPercentage, HouseholdAmount? Measure);
