using System.Collections.Immutable;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>How long a formula bakes and cools.</summary>
/// <param name="Target">Core temperature that it is baked to [°C].</param>
/// <param name="TimeToCore">Time until the core has it [min]; null where this oven never brings it there.</param>
/// <param name="ProbeFrom">Minute from which the core is probed [min]; null as the time is.</param>
/// <param name="Loss">Water lost in the oven, of the batter [%].</param>
/// <param name="SliceAt">Core temperature at which it may be sliced [°C].</param>
/// <param name="CoolToSlice">Time on the rack, out of its tin, until then [min]; null as the time is.</param>
/// <param name="Curve">The core from the oven's door to the knife; empty as the time is null.</param>
/// <param name="Fill">How it fills its tin; null where it has none.</param>
/// <param name="BoilingPoint">Local boiling point of water [°C].</param>
/// <param name="Pace">How fast heat goes in, in this kitchen, by what handbooks expect [%]; null where no bake is known.</param>
/// <param name="IsLossWeighed">Whether the known bake was weighed, so that the loss is told from it.</param>
/// <param name="Variations">What the time would be with one thing done otherwise; empty as the time is null.</param>
/// <param name="Cautions">What a baker should know.</param>
public sealed record BakeForecast(
    Celsius Target,
    MinuteRange? TimeToCore,
    Minutes? ProbeFrom,
    PercentRange Loss,
    Celsius SliceAt,
    MinuteRange? CoolToSlice,
    ImmutableArray<CorePoint> Curve,
    TinFill? Fill,
    Celsius BoilingPoint,
    Percent? Pace,
    bool IsLossWeighed,
    ImmutableArray<BakeVariation> Variations,
    ImmutableArray<ForecastCaution> Cautions);
