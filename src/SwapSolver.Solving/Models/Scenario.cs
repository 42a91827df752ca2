using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Models;

/// <summary>A kitchen in which an answer must keep some bands too, not only with typical facts.</summary>
/// <param name="Name">Its name in the model.</param>
/// <param name="Draw">The facts there.</param>
/// <param name="Holds">What must be kept there, each with its band there.</param>
public sealed record Scenario(string Name, Draw Draw, ImmutableArray<Hold> Holds)
{
    /// <summary>The band of a hold where the facts are drawn so: one that hangs on the reference's reading moves with it.</summary>
    public static Band BandOf(Hold hold, Formula reference, Draw draw) =>
        hold.Share is { } share ? share.Of(hold.Balance.Read(reference, reference, draw))
        : hold.IsAnchored ? hold.Balance.Band(reference, draw)
        : hold.Band;
}
