namespace SwapSolver.OrTools.Tests;

public sealed class CbcContractTests() : SolverContract(Backend.Cbc);
