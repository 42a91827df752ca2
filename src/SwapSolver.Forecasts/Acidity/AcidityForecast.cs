using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>How acid a batter and its crumb are, as a meter reads them at 25 °C.</summary>
/// <param name="Batter">After mixing, carbon dioxide still in it [pH].</param>
/// <param name="Crumb">After the oven, cooled [pH].</param>
/// <param name="IsSalty">Whether the water holds more salt than the activity equation bears: then the pH is a rougher figure than its range says.</param>
public sealed record AcidityForecast(PhRange Batter, PhRange Crumb, bool IsSalty);
