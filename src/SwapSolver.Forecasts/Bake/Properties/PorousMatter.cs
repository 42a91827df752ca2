using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>Conductivity of a crumb with its bubbles, in which steam carries heat from the warm wall to the cool one.</summary>
internal static class PorousMatter
{
    /// <summary>Conductivity of the air in a bubble [W/(m K)]; handbooks, 0.026 at 25 to 0.031 at 95 °C.</summary>
    private const double Air = 0.028;

    /// <summary>Molar gas constant [J/(mol K)] and molar mass of water [kg/mol].</summary>
    private const double GasConstant = 8.314462618, WaterMolarMass = 0.0180153;

    /// <summary>Diffusivity of steam in air at 0 °C and one atmosphere [m2/s], and how it grows with the temperature in kelvin [1].</summary>
    private const double Diffusivity = 2.12e-5, DiffusivityExponent = 1.88;

    /// <summary>Nearer than this to boiling the pressure of the steam would pass that of the air between, and the formula ends [K].</summary>
    private const double NearestToBoiling = 2;

    private const double ZeroCelsius = 273.15;

    /// <summary>What steam adds to the conductivity of a bubble [W/(m K)] (Philip and de Vries 1957; de Vries, Sluimer and Bloksma 1989).</summary>
    /// <param name="celsius">Temperature; held at two kelvin below boiling.</param>
    /// <param name="pressure">Pressure of the air [Pa].</param>
    /// <param name="boiling">Where the water of this crumb boils under that pressure [°C].</param>
    public static double VapourConductivity(double celsius, double pressure, double boiling)
    {
        var at = Math.Min(celsius, boiling - NearestToBoiling);
        // Solutes hold water back: its pressure reaches that of the air only where it boils.
        var activity = pressure / SaturatedWater.PressureAt(new Celsius(boiling)).Value;
        double Steam(double temperature) => activity * SaturatedWater.PressureAt(new Celsius(temperature)).Value;
        const double Step = 0.01;
        var slope = (Steam(at + Step) - Steam(at - Step)) / (2 * Step);
        var kelvin = at + ZeroCelsius;
        var diffusivity = Diffusivity * Math.Pow(kelvin / ZeroCelsius, DiffusivityExponent) * Pascals.Atmosphere.Value / pressure;
        return diffusivity * WaterMolarMass / (GasConstant * kelvin) * pressure / (pressure - Steam(at)) * slope * SaturatedWater.HeatOfVaporisation(at);
    }

    /// <summary>Conductivity of bubbles in a condensed phase [W/(m K)] (Maxwell and Eucken).</summary>
    /// <param name="condensed">Conductivity of the condensed phase [W/(m K)].</param>
    /// <param name="gas">Conductivity of the bubbles [W/(m K)].</param>
    /// <param name="porosity">Volume of the bubbles by that of the whole [1].</param>
    public static double Conductivity(double condensed, double gas, double porosity) =>
        condensed * ((2 * condensed) + gas - (2 * porosity * (condensed - gas))) / ((2 * condensed) + gas + (porosity * (condensed - gas)));

    /// <summary>Conductivity of a wet crumb [W/(m K)].</summary>
    /// <param name="condensed">Conductivity without the bubbles [W/(m K)].</param>
    /// <param name="porosity">Volume of the bubbles [1].</param>
    /// <param name="vapour">What steam adds [W/(m K)].</param>
    /// <param name="share">Share of it that real bubbles reach [1].</param>
    public static double WetConductivity(double condensed, double porosity, double vapour, double share) =>
        Conductivity(condensed, Air + (share * vapour), porosity);
}
