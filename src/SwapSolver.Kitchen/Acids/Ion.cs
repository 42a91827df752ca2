namespace SwapSolver.Kitchen.Acids;

/// <summary>An ion that takes no part in acid and base and only carries charge, as the potassium of cream of tartar.</summary>
/// <param name="Id">Its id, as <c>potassium</c>.</param>
/// <param name="Symbol">Its symbol, as <c>K+</c>.</param>
/// <param name="Charge">Its charge [elementary charges]; not 0.</param>
public sealed record Ion(string Id, string Symbol, int Charge);
