using System.Runtime.CompilerServices;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Solving.Answers;

/// <summary>Balances and formulas are the same where they are one object: to compare them line by line would cost more than what is
/// looked up.</summary>
internal sealed class SameObjects : IEqualityComparer<(Balance Balance, Formula Formula, Formula Reference)>
{
    /// <summary>The one there is.</summary>
    public static readonly SameObjects Instance = new();

    /// <inheritdoc/>
    public bool Equals((Balance Balance, Formula Formula, Formula Reference) x, (Balance Balance, Formula Formula, Formula Reference) y) =>
        ReferenceEquals(x.Balance, y.Balance) && ReferenceEquals(x.Formula, y.Formula) && ReferenceEquals(x.Reference, y.Reference);

    /// <inheritdoc/>
    public int GetHashCode((Balance Balance, Formula Formula, Formula Reference) obj) =>
        HashCode.Combine(RuntimeHelpers.GetHashCode(obj.Balance), RuntimeHelpers.GetHashCode(obj.Formula), RuntimeHelpers.GetHashCode(obj.Reference));
}
