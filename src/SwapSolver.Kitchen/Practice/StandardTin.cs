using SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Kitchen.Practice;

/// <summary>A tin that shops sell.</summary>
/// <param name="Name">What it is sold as.</param>
/// <param name="Tin">Its inner measures.</param>
/// <param name="Source">Key of the source.</param>
public sealed record StandardTin(string Name, Tin Tin, string Source);
