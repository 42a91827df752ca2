using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Balances;

/// <summary>Every balance of the shipped list, and one wish to leave an allergen out.</summary>
internal static class EveryBalance
{
    private static readonly LeftOut WithoutTreeNuts = new(
        TestKitchen.Bakehouse.Balances.BatterMass.Settings with { Id = "without-tree-nuts" },
        ingredient => ingredient.Allergens.Carries("tree-nuts"))
    {
        MayBeReadAsClaim = true,
        IsCertainOf = _ => true,
    };

    public static readonly ImmutableArray<Balance> All = [.. TestKitchen.Bakehouse.Balances.Targetable, WithoutTreeNuts];

    public static Balance Find(string id) => All.Single(balance => balance.Id == id);

    public static IEnumerable<string> Ids(Func<Balance, bool> which) => All.Where(which).Select(balance => balance.Id);
}
