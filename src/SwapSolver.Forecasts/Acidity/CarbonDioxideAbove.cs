namespace SwapSolver.Forecasts;

/// <summary>Carbon dioxide of a solution and of the bubbles in it: it shares itself out between the water and what air there is,
/// and leaves where its pressure would pass a limit.</summary>
/// <param name="Dissociation">Dissolved carbon dioxide and its ions.</param>
/// <param name="TotalMolality">All that there is, dissolved, as its ions and in the bubbles, if none left [mol/kg]; infinite under a supply that does not run out, as air.</param>
/// <param name="MostPressureAtm">Pressure at which it leaves [atm]; infinite in a closed vessel.</param>
/// <param name="AirMolality">Other gas in the bubbles [mol/kg of water]; 0 where there is none.</param>
internal sealed record CarbonDioxideAbove(
    Kitchen.Acids.Dissociation Dissociation, double TotalMolality, double MostPressureAtm, double AirMolality)
{
    /// <summary>What of it is in the water, with its ions [mol/kg].</summary>
    /// <param name="perAtm">What the water holds under one atmosphere of it, with its ions [mol/(kg atm)].</param>
    public double InWater(double perAtm)
    {
        if (AirMolality == 0 || double.IsInfinity(MostPressureAtm))
        {
            return Math.Min(TotalMolality, perAtm * MostPressureAtm);
        }

        // Bubbles stand at the full pressure P, so at a pressure p they hold air times p / (P - p) of it. With what the
        // water holds, perAtm p, that is the total; the smaller root of the square, in the form that keeps its digits.
        var sum = (perAtm * MostPressureAtm) + TotalMolality + AirMolality;
        var pressure = 2 * TotalMolality * MostPressureAtm / (sum + Math.Sqrt((sum * sum) - (4 * perAtm * TotalMolality * MostPressureAtm)));
        return perAtm * pressure;
    }
}
