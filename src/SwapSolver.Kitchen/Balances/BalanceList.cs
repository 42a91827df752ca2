using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>Every rule of the kitchen, in one explicit list.</summary>
public sealed class BalanceList
{
    private readonly ImmutableArray<Fact> reads;

    private readonly Sweetness sweetness;

    /// <summary>Makes the list.</summary>
    /// <param name="settings">Finds the settings of a balance by its id.</param>
    /// <param name="convention">How net carbohydrate is counted.</param>
    public BalanceList(Func<string, BalanceSettings> settings, NetCarbohydrateConvention convention)
    {
        NetCarbohydrate = new NetCarbohydrate(settings("net-carbohydrate"), convention);
        Leavening = new Leavening(settings("leavening"));
        sweetness = new Sweetness(settings("sweetness"));
        Ratios =
        [
            new Hydration(settings("hydration")),
            Leavening,
            new Gas(settings("gas")),
            new SettingProtein(settings("setting-protein")),
            new Gel(settings("gel")),
            new Richness(settings("richness")),
            NetCarbohydrate,
            new Salt(settings("salt")),
        ];
        Anchored = [.. Ratios.Where(balance => balance is not (Balances.NetCarbohydrate or Salt))];
        RoleMasses = [.. BandedRoles.Select(role => new RoleMass(settings(RoleMassId(role)), role))];
        BatterMass = new BatterMass(settings("batter-mass"));
        All = [.. Ratios, .. RoleMasses, BatterMass];
        Portions =
        [
            new PerPortion(settings("energy"), Fact.Energy, PortionSize.Slice),
            new PerPortion(settings("protein"), Fact.Protein, PortionSize.Slice),
            new PerPortion(settings("fat"), Fact.Fat, PortionSize.Slice),
            new PerPortion(settings("saturated-fat"), Fact.SaturatedFat, PortionSize.Slice),
            new PerPortion(settings("sugars"), Fact.Sugars, PortionSize.Slice),
            new PerPortion(settings("fibre"), Fact.Fibre, PortionSize.Slice),
            new PerPortion(settings("sodium"), Fact.Sodium, PortionSize.Slice),
            new PerPortion(settings("price"), Fact.Price, PortionSize.Loaf),
            new EggCount(settings("eggs")),
            sweetness,
        ];
        Targetable = [.. All, .. Portions];
        reads = [.. All.SelectMany(balance => balance.Reads).Distinct()];
    }

    /// <summary>Roles whose mass is held. Acids, bases and blends are held by leavening and gas, gels by their
    /// strength: two grams of one do the work of forty of another, so their mass says nothing.</summary>
    public static readonly ImmutableArray<Role> BandedRoles =
        [Role.Flour, Role.Liquid, Role.Egg, Role.Fat, Role.Sweetener, Role.Salt, Role.Flavour, Role.Yeast];

    /// <summary>The rules that say something of a formula by itself.</summary>
    public ImmutableArray<Balance> Ratios { get; }

    /// <summary>The rules whose readings should stay close to the reference's: those of the crumb. Net carbohydrate and
    /// salt are limits, not aims.</summary>
    public ImmutableArray<Balance> Anchored { get; }

    /// <summary>The rules that hold the mass of a role against a reference.</summary>
    public ImmutableArray<RoleMass> RoleMasses { get; }

    /// <summary>The rule that holds the batter mass against a reference.</summary>
    public BatterMass BatterMass { get; }

    /// <summary>The rules that every formula is judged by, ratios first.</summary>
    public ImmutableArray<Balance> All { get; }

    /// <summary>The readings that are told only where a limit or a target asks for them: what a slice holds, what the loaf
    /// costs, how many eggs it takes, how sweet it is.</summary>
    public ImmutableArray<Balance> Portions { get; }

    /// <summary>The readings that a formula is told by itself: the ratios, and how sweet it is where it holds a sweetener.</summary>
    public ImmutableArray<Balance> ToldOf(Formula formula) =>
        formula.MassOf(Role.Sweetener) > Grams.None ? Ratios.Add(sweetness) : Ratios;

    /// <summary>Everything that a limit or a target can be set on.</summary>
    public ImmutableArray<Balance> Targetable { get; }

    /// <summary>The rule of an id, or of the name that answers print with hyphens for its spaces, as <c>acid-by-soda</c>; null where there is none.</summary>
    public Balance? Find(string id) => Targetable.FirstOrDefault(balance => balance.Id == id)
        ?? Targetable.FirstOrDefault(balance => balance.Settings.Title.Replace(' ', '-') == id);

    /// <summary>Whether everything that the rules read is known of an ingredient; one that lacks a fact cannot be solved with.</summary>
    public bool Know(Ingredient ingredient) => reads.All(fact => ingredient.RangeOf(fact) is not null);

    /// <summary>The facts that the rules read and that are not known of an ingredient.</summary>
    public ImmutableArray<Fact> Unknown(Ingredient ingredient) => [.. reads.Where(fact => ingredient.RangeOf(fact) is null)];

    /// <summary>The rule that counts net carbohydrate.</summary>
    public NetCarbohydrate NetCarbohydrate { get; }

    /// <summary>The rule that sets acid against base.</summary>
    public Leavening Leavening { get; }

    /// <summary>Id of the rule that holds the mass of a role, as <c>flour-mass</c>.</summary>
    public static string RoleMassId(Role role) => $"{role.ToString().ToLowerInvariant()}-mass";
}
