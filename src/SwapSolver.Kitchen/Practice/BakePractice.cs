using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Practice;

/// <summary>What the forecast of the bake goes by, from <c>data/forecasts/bake.json</c>.</summary>
/// <param name="Components">How the components of food take heat.</param>
/// <param name="Crumb">Batters and crumbs.</param>
/// <param name="Oven">Ovens, tins and probes.</param>
/// <param name="Core">What a core is baked to.</param>
/// <param name="Rack">Cooling.</param>
/// <param name="Margins">What is added for the form of the model.</param>
/// <param name="FullPercent">How full of baked loaf a well-filled tin is [%].</param>
/// <param name="Tins">Tins that shops sell.</param>
public sealed record BakePractice(
    ThermalComponents Components,
    CrumbPractice Crumb,
    OvenPractice Oven,
    CorePractice Core,
    RackPractice Rack,
    MarginPractice Margins,
    Figure FullPercent,
    ImmutableArray<StandardTin> Tins);
