namespace SwapSolver.Solving.Models;

/// <summary>One unknown of a model.</summary>
/// <param name="Name">Plain name, unique within the model; letters, digits and underscores.</param>
/// <param name="Low">Least value.</param>
/// <param name="High">Greatest value; may be infinite.</param>
/// <param name="IsWhole">Whether it takes whole values only.</param>
/// <param name="Cost">What one unit adds to the objective, which is minimised.</param>
public sealed record Column(string Name, double Low, double High, bool IsWhole, double Cost);

/// <summary>A term of a row.</summary>
/// <param name="Column">Index of the column.</param>
/// <param name="Coefficient">What one unit of it adds.</param>
public readonly record struct Term(int Column, double Coefficient);

/// <summary>One row of a model: <c>Low &lt;= sum of terms &lt;= High</c>.</summary>
/// <param name="Name">Plain name, unique within the model; letters, digits and underscores.</param>
/// <param name="Terms">Its terms, one a column at most.</param>
/// <param name="Low">Least sum; may be minus infinity.</param>
/// <param name="High">Greatest sum; may be infinite.</param>
public sealed record ModelRow(string Name, IReadOnlyList<Term> Terms, double Low, double High);
