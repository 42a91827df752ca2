namespace SwapSolver.Solving.Models;

/// <summary>One row of a model: <c>Low &lt;= sum of terms &lt;= High</c>.</summary>
/// <param name="Name">Plain name, unique within the model; letters, digits and underscores.</param>
/// <param name="Terms">Its terms, one a column at most.</param>
/// <param name="Low">Least sum; may be minus infinity.</param>
/// <param name="High">Greatest sum; may be infinite.</param>
public sealed record ModelRow(string Name, IReadOnlyList<Term> Terms, double Low, double High);
