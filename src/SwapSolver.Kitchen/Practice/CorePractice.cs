using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Practice;

/// <summary>What a core is baked to.</summary>
/// <param name="BelowBoilingKelvin">How far below the local boiling point a bake ends [K].</param>
/// <param name="NearestBoilingKelvin">The nearest to the local boiling point that is answered [K].</param>
/// <param name="EggSafeCelsius">Least core temperature of what holds egg [°C].</param>
/// <param name="SetCelsius">From where a crumb without starch has set [°C].</param>
public sealed record CorePractice(Figure BelowBoilingKelvin, Figure NearestBoilingKelvin, Figure EggSafeCelsius, Figure SetCelsius);
