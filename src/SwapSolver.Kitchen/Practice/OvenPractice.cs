using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Practice;

/// <summary>What is taken of ovens, tins and probes.</summary>
/// <param name="DialCelsius">Dial where a formula states no oven [°C].</param>
/// <param name="OffsetKelvin">By how much an oven misses its dial [K].</param>
/// <param name="StillAirWPerM2K">Convection without fan [W/(m2 K)].</param>
/// <param name="FanWPerM2K">Convection with fan [W/(m2 K)].</param>
/// <param name="CrustEmissivity">Emissivity of an open crust [1].</param>
/// <param name="TinEmissivity">Emissivity of tin or tray [1].</param>
/// <param name="StartCelsius">Temperature of the batter as it goes in [°C].</param>
/// <param name="ColdStartMinutes">Time in which a cold oven heats up [min].</param>
/// <param name="FreeFormHeightByWidthPercent">Height of a loaf on a tray by its width, where no measures are stated [%].</param>
/// <param name="ProbeKelvin">By how much a probe misses the core [K].</param>
/// <param name="SkinDryingKgPerM2">Water that dries off an open skin before it boils [kg/m2].</param>
public sealed record OvenPractice(
    Figure DialCelsius,
    Figure OffsetKelvin,
    Figure StillAirWPerM2K,
    Figure FanWPerM2K,
    Figure CrustEmissivity,
    Figure TinEmissivity,
    Figure StartCelsius,
    Figure ColdStartMinutes,
    Figure FreeFormHeightByWidthPercent,
    Figure ProbeKelvin,
    Figure SkinDryingKgPerM2);
