using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Wishes;

/// <summary>Gathers what an answer must keep: the default bands around the reference, and what the caller wishes.</summary>
public static class HoldList
{
    /// <summary>Roles whose mass need not be kept where a line of theirs is left out. What an egg does is held by
    /// hydration, setting protein and richness; salt and flavour may simply go; yeast is held by gas.</summary>
    private static readonly ImmutableArray<Role> FreedByLeavingOut = [Role.Egg, Role.Salt, Role.Flavour, Role.Yeast];

    /// <summary>Roles of which a wish for less of one line is a wish for less of the role: nothing stands in for it.</summary>
    private static readonly ImmutableArray<Role> Seasons = [Role.Salt, Role.Flavour, Role.Yeast];

    /// <summary>The default bands of a reference and the caller's wishes.</summary>
    /// <param name="balances">The rules.</param>
    /// <param name="reference">The formula that is known to work.</param>
    /// <param name="wishes">The caller's wishes.</param>
    public static ImmutableArray<Hold> Around(BalanceList balances, Formula reference, ImmutableArray<Hold> wishes) =>
        Around(Defaults(balances, reference), reference, wishes);

    /// <summary>The default bands of a reference, whatever is wished.</summary>
    /// <param name="balances">The rules.</param>
    /// <param name="reference">The formula that is known to work.</param>
    internal static ImmutableArray<Hold> Defaults(BalanceList balances, Formula reference) =>
    [
        .. balances.All
            .Where(balance => balance.CanRead(reference))
            // A loaf without soda has no reading of acid by soda, and a variant that takes soda in must balance it.
            .Where(balance => balance is Leavening || balance.Read(reference, reference, Draws.Typical) is not null)
            .Select(balance => new Hold(balance.Id, balance, balance.Band(reference, Draws.Typical), FromCaller: false, IsAnchored: true))
            .Where(hold => !hold.Band.IsOpen),
    ];

    /// <summary>The default bands of a reference, where they are known, and the caller's wishes.</summary>
    /// <param name="defaults">As <see cref="Defaults"/> gives them.</param>
    /// <param name="reference">The formula that is known to work.</param>
    /// <param name="wishes">The caller's wishes.</param>
    internal static ImmutableArray<Hold> Around(ImmutableArray<Hold> defaults, Formula reference, ImmutableArray<Hold> wishes)
    {
        if (wishes.IsEmpty)
        {
            return defaults;
        }

        var freed = reference.Lines
            .Where(line => wishes.Any(wish => wish.LeftOut is { } rule && rule.Carries(line.Ingredient)))
            .Select(line => line.Ingredient.Role)
            .Intersect(FreedByLeavingOut)
            // Half the salt is half of what its role weighs.
            .Concat(wishes.Where(wish => wish.FromCaller && wish.Balance is LineMass).SelectMany(wish => wish.Balance.Settings.Target.FreedRoles).Where(Seasons.Contains))
            .ToHashSet();
        if (freed.Contains(Role.Egg))
        {
            // Fruit and vegetables may stand in for the egg's water; they are counted among the flavours.
            freed.Add(Role.Flavour);
        }

        return [.. defaults.Where(hold => hold.Balance is not RoleMass role || !freed.Contains(role.Role)), .. wishes];
    }

    /// <summary>The same holds with room in the liquids for the water that went out with what was left out: an egg is
    /// three quarters water, and buttermilk is counted among the acids.</summary>
    /// <param name="holds">The holds.</param>
    /// <param name="reference">The formula that is known to work.</param>
    public static ImmutableArray<Hold> WithRoomForWater(ImmutableArray<Hold> holds, Formula reference)
    {
        var liquids = reference.MassOf(Role.Liquid).Value;
        // Where nothing went out the band stays as it is; that it hangs on the reference moves nothing, for a role weighs itself in every kitchen.
        if (liquids == 0 || !holds.Any(static hold => hold.LeftOut is not null))
        {
            return holds;
        }

        var gone = reference.Lines
            .Where(line => line.Ingredient.Role != Role.Liquid)
            .Where(line => holds.Any(hold => hold.LeftOut is { } rule && rule.Carries(line.Ingredient)))
            .Sum(line => line.Grams.Value * line.Ingredient.Typical[Fact.Water]);
        return
        [
            .. holds.Select(hold => hold.Balance is RoleMass { Role: Role.Liquid } && hold.Band.High is { } high
                ? hold with { Band = hold.Band with { High = new Level(high.Value + (gone / liquids)) }, IsAnchored = false }
                : hold),
        ];
    }
}
