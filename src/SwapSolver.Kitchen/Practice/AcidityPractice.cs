using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Practice;

/// <summary>What the forecast of acidity goes by, from <c>data/forecasts/acidity.json</c>.</summary>
/// <param name="AirBeatenInLitresPerKgWater">Air that a batter takes in while it is mixed, and shares its carbon dioxide with [L/kg of its water].</param>
/// <param name="CrumbCarbonDioxideAtm">Partial pressure of carbon dioxide about a cooled crumb [atm].</param>
/// <param name="TurnedToCarbonatePercent">Share of the soda left over that the oven turns to carbonate within the crumb [%].</param>
/// <param name="TitratedToPh">Where a titration of sour food ends [pH].</param>
/// <param name="DryBelowWaterPercent">Water below which a batter has no pH to speak of, of its mass [%].</param>
/// <param name="SourBelowPh">Crumb pH below which a loaf tastes sour [pH].</param>
/// <param name="ColoursFromPh">Crumb pH from which a behaviour shows, by its kind [pH].</param>
public sealed record AcidityPractice(
    Figure AirBeatenInLitresPerKgWater,
    Figure CrumbCarbonDioxideAtm,
    Figure TurnedToCarbonatePercent,
    Figure TitratedToPh,
    Figure DryBelowWaterPercent,
    Figure SourBelowPh,
    ImmutableDictionary<string, Figure> ColoursFromPh);
