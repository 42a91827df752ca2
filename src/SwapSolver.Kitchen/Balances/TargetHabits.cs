using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Balances;

/// <summary>What goes with the wish to move a reading, from the balance's data file.</summary>
/// <param name="Better">Which way is better.</param>
/// <param name="NewRoles">Roles in which something new may come in to reach it.</param>
/// <param name="FreedRoles">Roles whose usual mass gives way to it: less salt is less of the salt.</param>
public sealed record TargetHabits(Better Better, ImmutableArray<Role> NewRoles, ImmutableArray<Role> FreedRoles)
{
    /// <summary>Nothing is said: neither way is better, nothing new comes in, no role gives way.</summary>
    public static readonly TargetHabits None = new(Better.Neither, [], []);
}
