namespace SwapSolver.OrTools.Tests;

public sealed class ScipContractTests() : SolverContract(Backend.Scip);
