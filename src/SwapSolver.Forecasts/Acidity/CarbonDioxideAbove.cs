namespace SwapSolver.Forecasts;

/// <summary>Carbon dioxide above a solution: what is dissolved stays until its pressure passes a limit, and then leaves.</summary>
/// <param name="Dissociation">Dissolved carbon dioxide and its ions.</param>
/// <param name="TotalMolality">All that there is, dissolved and as its ions, if none left [mol/kg]; infinite under a supply that does not run out, as air.</param>
/// <param name="MostPressureAtm">Pressure at which it leaves [atm]; infinite in a closed vessel.</param>
internal sealed record CarbonDioxideAbove(Kitchen.Acids.Dissociation Dissociation, double TotalMolality, double MostPressureAtm);
