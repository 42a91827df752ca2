namespace SwapSolver.Forecasts;

/// <summary>The core of a loaf at one time.</summary>
/// <param name="Seconds">Since the loaf came in [s].</param>
/// <param name="Core">Temperature [°C].</param>
internal readonly record struct CoreReading(double Seconds, double Core);
