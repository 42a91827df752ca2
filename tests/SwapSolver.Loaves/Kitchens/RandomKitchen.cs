using SwapSolver.Solving.Models;

namespace SwapSolver.Loaves.Kitchens;

/// <summary>A kitchen that chance made up: a formula, what is in its cupboard, what it wishes.</summary>
/// <param name="Number">Its number, which makes it again.</param>
/// <param name="Name">The question in words.</param>
/// <param name="Problem">The question as a problem, put strictly.</param>
public sealed record RandomKitchen(int Number, string Name, FormulaProblem Problem);
