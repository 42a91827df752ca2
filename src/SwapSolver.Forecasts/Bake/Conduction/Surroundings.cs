namespace SwapSolver.Forecasts;

/// <summary>What a loaf gives its heat to or takes it from: an oven, or a rack in a kitchen.</summary>
/// <param name="At">Temperature of air and walls by the time since the loaf came in [s to °C].</param>
/// <param name="Convection">Transfer to the air [W/(m2 K)]; at a difference of one kelvin where it grows with it.</param>
/// <param name="ConvectionPower">How it grows with the difference between skin and air [1]: 0 in an oven, a quarter in still air.</param>
/// <param name="Emissivities">Emissivity by side [1].</param>
/// <param name="EvaporatedShare">Share of the heat given off that leaves with steam from the skin [1].</param>
/// <param name="Drying">Water that leaves the skin before it boils.</param>
internal sealed record Surroundings(
    Func<double, double> At, double Convection, double ConvectionPower, Func<Face, double> Emissivities, double EvaporatedShare, SkinDrying Drying)
{
    /// <summary>Power with which still air takes more heat the warmer the skin is [1].</summary>
    public const double StillAirPower = 0.25;

    /// <summary>Transfer to the air [W/(m2 K)].</summary>
    /// <param name="skin">Temperature of the skin [°C].</param>
    /// <param name="outside">Temperature of the air [°C].</param>
    public double ConvectionAt(double skin, double outside) => ConvectionPower switch
    {
        <= 0 => Convection,
        // Two roots are a power that takes a fifth of the time.
        StillAirPower => Convection * Math.Sqrt(Math.Sqrt(Math.Abs(skin - outside))),
        _ => Convection * Math.Pow(Math.Abs(skin - outside), ConvectionPower),
    };

    /// <summary>Air of one temperature with one transfer to every side, and no radiation.</summary>
    public static Surroundings Plain(double celsius, double transfer) => new(_ => celsius, transfer, 0, static _ => 0, 0, SkinDrying.None);
}
