namespace SwapSolver.Kitchen.Acids;

/// <summary>What is known of an acid, a base or a powder beyond the facts of the ingredient of the same id.</summary>
/// <param name="Id">Its id; the ingredient's, where the pantry has one.</param>
/// <param name="Taste">How it tastes in a crumb, in one plain sentence.</param>
public abstract record Leavener(string Id, string Taste);
