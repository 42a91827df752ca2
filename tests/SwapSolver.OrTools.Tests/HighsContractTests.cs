namespace SwapSolver.OrTools.Tests;

public sealed class HighsContractTests() : SolverContract(Backend.Highs);
