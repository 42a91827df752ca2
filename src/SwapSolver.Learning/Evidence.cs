namespace SwapSolver.Learning;

/// <summary>One measurement of a fact.</summary>
/// <param name="Value">What it says, in the fact's unit.</param>
/// <param name="Scatter">By how much such a measurement scatters: standard deviation, in the fact's unit; above 0.</param>
public sealed record Evidence(double Value, double Scatter);
