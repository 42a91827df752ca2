using System.Collections.Immutable;
using SwapSolver.Asking.Text;

namespace SwapSolver.Asking.Grammar;

/// <summary>Something that was read in its place of a clause.</summary>
/// <param name="Part">The place, as <c>from</c> or <c>below</c>.</param>
/// <param name="Lexeme">What stands there.</param>
internal sealed record Filled(string Part, Lexeme Lexeme);

/// <summary>A clause of a question.</summary>
/// <param name="Means">What it means, as <c>WITHOUT</c>.</param>
/// <param name="Parts">What was read in it, in order.</param>
/// <param name="IsNegated">Whether a 'not' stands before it.</param>
internal sealed record Clause(string Means, ImmutableArray<Filled> Parts, bool IsNegated)
{
    /// <summary>The clause in the words of the question.</summary>
    public string Words => string.Join(' ', Parts.Select(part => part.Lexeme.Text));

    /// <summary>What was read in a place.</summary>
    public IEnumerable<Lexeme> All(string part) => Parts.Where(filled => filled.Part == part).Select(filled => filled.Lexeme);

    /// <summary>What was read first in a place; null where nothing was.</summary>
    public Lexeme? First(string part) => All(part).FirstOrDefault();

    /// <summary>The numbers of the clause, in order.</summary>
    public ImmutableArray<double> Counts => [.. All(Lexeme.Count).Select(count => count.Number(Lexeme.Count))];
}
