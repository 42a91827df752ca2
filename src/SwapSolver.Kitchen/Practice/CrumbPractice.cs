using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Practice;

/// <summary>What is taken of batters and crumbs where a formula does not say it.</summary>
/// <param name="BakedDensityKgPerM3">Batter by the volume of the baked loaf [kg/m3].</param>
/// <param name="BatterDensityKgPerM3">Density of the batter in the tin [kg/m3].</param>
/// <param name="VapourSharePercent">How much of what steam could carry through the pores it does carry [%].</param>
/// <param name="ConductivityPercent">How far the mixture rules miss [% of the conductivity].</param>
/// <param name="CrustConductivityWPerMK">Conductivity of the crust [W/(m K)].</param>
/// <param name="CrustWaterPercentOfDry">Water that stays in the crust [% of its dry matter].</param>
/// <param name="BoilingRiseKelvin">By how much the water of a batter boils hotter than pure water [K].</param>
public sealed record CrumbPractice(
    Figure BakedDensityKgPerM3,
    Figure BatterDensityKgPerM3,
    Figure VapourSharePercent,
    Figure ConductivityPercent,
    Figure CrustConductivityWPerMK,
    Figure CrustWaterPercentOfDry,
    Figure BoilingRiseKelvin);
