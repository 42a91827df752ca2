using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>One linear row over the grams x: <c>sum coefficient(i) x_i &gt;= least</c>.</summary>
/// <param name="Balance">Id of the balance that asks for it.</param>
/// <param name="Side">The side of the band that it holds.</param>
/// <param name="Coefficient">What one gram of an ingredient adds to the left side.</param>
/// <param name="Least">What the left side must reach.</param>
/// <param name="Exact">True where the row holds exactly when the reading keeps that side; false where it is only
/// safe: it holds only if the reading keeps that side, but may refuse a formula that would keep it.</param>
public sealed record Row(string Balance, Side Side, Func<FactSheet, PerGram> Coefficient, double Least, bool Exact);
