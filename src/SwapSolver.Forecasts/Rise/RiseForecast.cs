using System.Collections.Immutable;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>How a batter rises by its soda and powder, and what stays behind.</summary>
/// <param name="Acidity">pH of batter and crumb; null where there is too little water.</param>
/// <param name="Freed">When the gas is freed.</param>
/// <param name="Gas">The gas against time, minute by minute, in order.</param>
/// <param name="VolumeAtBowl">All gas at the bowl's temperature and the local pressure [mL].</param>
/// <param name="VolumeAtSetting">All gas at the temperature at which the crumb sets and the local pressure, dry [mL].</param>
/// <param name="Neutralised">Share of the bicarbonate that acid uses up [%]; null where there is none.</param>
/// <param name="SodaLeftPer100Grams">Soda that acid left, as sodium bicarbonate, in 100 g of baked crumb [g].</param>
/// <param name="WorkingWindow">Time after mixing by which the batter should be in the oven [min]; null where it frees no gas.</param>
/// <param name="LostOnBench">Share of the gas that could still lift the crumb that the stated wait loses [%].</param>
/// <param name="Pressure">Local air pressure [Pa].</param>
/// <param name="BoilingPoint">Local boiling point of water [°C].</param>
/// <param name="LeaveningCut">By how much to cut leavening at this height [%]; null where none is needed.</param>
/// <param name="Cautions">What a baker should know.</param>
public sealed record RiseForecast(
    AcidityForecast? Acidity,
    FreedGas Freed,
    ImmutableArray<GasPoint> Gas,
    Millilitres VolumeAtBowl,
    Millilitres VolumeAtSetting,
    PercentRange? Neutralised,
    GramRange SodaLeftPer100Grams,
    MinuteRange? WorkingWindow,
    Percent LostOnBench,
    Pascals Pressure,
    Celsius BoilingPoint,
    PercentRange? LeaveningCut,
    ImmutableArray<ForecastCaution> Cautions);
