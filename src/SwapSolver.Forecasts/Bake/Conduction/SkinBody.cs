namespace SwapSolver.Forecasts;

/// <summary>The cells of a loaf as its skin sees them; the arrays are those of the flow, as they stand.</summary>
/// <param name="Celsius">Temperature of each [°C].</param>
/// <param name="Water">Water of each [kg/m3].</param>
/// <param name="Outward">Resistivity of each on the side of the skin [m K/W].</param>
/// <param name="Boiling">Where their water boils [°C].</param>
/// <param name="CrustWater">Water that stays in a crust [kg/m3].</param>
internal sealed record SkinBody(double[] Celsius, double[] Water, double[] Outward, double Boiling, double CrustWater);
