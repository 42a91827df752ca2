namespace SwapSolver.Forecasts;

/// <summary>A solution come to rest.</summary>
/// <param name="Ph">Its pH.</param>
/// <param name="IonicStrength">Its ionic strength, held at the most that the activity equation bears [mol/kg].</param>
/// <param name="Residual">Charge left over [mol/kg]: 0 but for the last digits, or the answer is wrong.</param>
/// <param name="SolidBitartrate">Potassium bitartrate that stays undissolved [mol/kg].</param>
internal sealed record SolvedSolution(double Ph, double IonicStrength, double Residual, double SolidBitartrate);
