namespace SwapSolver.Kitchen.Formulas;

/// <summary>What the batter is baked in or on.</summary>
public abstract record Shape;
