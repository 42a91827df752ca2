using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Practice;

/// <summary>What the forecast of acidity goes by, from <c>data/forecasts/acidity.json</c>.</summary>
/// <param name="BatterCarbonDioxidePercentOfPressure">Carbon dioxide in the bubbles of a batter, of the air's pressure [%].</param>
/// <param name="LostInMixingPercent">Carbon dioxide of the soda that stirring loses to the air beyond what acid frees [%].</param>
/// <param name="CrumbCarbonDioxideAtm">Partial pressure of carbon dioxide about a cooled crumb [atm].</param>
/// <param name="TurnedToCarbonatePercent">Share of the soda left over that the oven turns to carbonate within the crumb [%].</param>
/// <param name="TitratedToPh">Where a titration of sour food ends [pH].</param>
/// <param name="DryBelowWaterPercent">Water below which a batter has no pH to speak of, of its mass [%].</param>
/// <param name="SourBelowPh">Crumb pH below which a loaf tastes sour [pH].</param>
/// <param name="ColoursFromPh">Crumb pH from which a behaviour shows, by its kind [pH].</param>
public sealed record AcidityPractice(
    Figure BatterCarbonDioxidePercentOfPressure,
    Figure LostInMixingPercent,
    Figure CrumbCarbonDioxideAtm,
    Figure TurnedToCarbonatePercent,
    Figure TitratedToPh,
    Figure DryBelowWaterPercent,
    Figure SourBelowPh,
    ImmutableDictionary<string, Figure> ColoursFromPh);
