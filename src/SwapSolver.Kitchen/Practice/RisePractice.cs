using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Practice;

/// <summary>What the forecast of the rise goes by, from <c>data/forecasts/rise.json</c>.</summary>
/// <param name="BowlCelsius">Temperature of a batter where none is said [°C].</param>
/// <param name="MixingMinutes">Time of mixing where none is said [min].</param>
/// <param name="BenchMinutes">Time from mixing to oven where none is said [min].</param>
/// <param name="OvenMinutes">Time in the oven until the crumb sets where none is said [min].</param>
/// <param name="CrumbSettingCelsius">Temperature at which a crumb has set [°C].</param>
/// <param name="StandardBenchMinutes">Time on the bench that the bench share of an acid is stated for [min].</param>
/// <param name="HalfLifeMinutes">Time in which a batter that stands loses half of the gas it holds [min].</param>
/// <param name="LossBornePercent">Loss of the gas that could still lift the crumb at which the batter should be in the oven [%].</param>
/// <param name="LongestWindowMinutes">Longest working window that is stated: other things end it then [min].</param>
/// <param name="SodaTastedGPer100G">Soda left in a crumb from which many eaters taste it [g/100 g].</param>
/// <param name="NeutralisedFromPercent">Share of the soda from which it counts as used up by acid [%].</param>
/// <param name="SlowerByPercent">By how much of its gas in mixing one acid must differ from another to be called faster or slower [% of all its gas].</param>
/// <param name="OvenOnlyPercent">Share of the gas in the oven from which an acid counts as acting in the oven only [%].</param>
/// <param name="RuleSodaTeaspoons">Soda that a kitchen rule takes for a teaspoon of powder [teaspoons].</param>
/// <param name="RuleAcidTeaspoons">Cream of tartar that it takes with it [teaspoons].</param>
/// <param name="CutFromMetres">Height above the sea from which leavening is cut [m].</param>
/// <param name="CutTolerancePercent">How far published advice on that cut scatters about the gas law, of the cut [%].</param>
/// <param name="SaltTastedPercent">Change of the sodium of a loaf from which it tastes of more or less salt [% of what there was].</param>
/// <param name="SaltTastedGrams">The same as salt, where the loaf is not known [g].</param>
/// <param name="PowderFloors">Legal floors of baking powder.</param>
public sealed record RisePractice(
    Figure BowlCelsius,
    Figure MixingMinutes,
    Figure BenchMinutes,
    Figure OvenMinutes,
    Figure CrumbSettingCelsius,
    Figure StandardBenchMinutes,
    Figure HalfLifeMinutes,
    Figure LossBornePercent,
    Figure LongestWindowMinutes,
    Figure SodaTastedGPer100G,
    Figure NeutralisedFromPercent,
    Figure SlowerByPercent,
    Figure OvenOnlyPercent,
    Figure RuleSodaTeaspoons,
    Figure RuleAcidTeaspoons,
    Figure CutFromMetres,
    Figure CutTolerancePercent,
    Figure SaltTastedPercent,
    Figure SaltTastedGrams,
    ImmutableArray<PowderFloor> PowderFloors);
