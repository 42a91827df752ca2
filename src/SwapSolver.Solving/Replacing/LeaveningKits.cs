using System.Collections.Immutable;
using SwapSolver.Kitchen.Acids;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Replacing;

/// <summary>Doses that stand in for an acid, a base or a powder, at equal millimoles of each.</summary>
/// <param name="Bakehouse">Everything that is known.</param>
/// <param name="Habits">How the kitchen weighs.</param>
public sealed record LeaveningKits(Bakehouse Bakehouse, Habits Habits)
{
    /// <summary>Least and greatest share of one of two acids [1]: with less it is not worth opening its jar.</summary>
    private const double LeastShare = 0.2, MostShare = 0.8;

    /// <summary>Steps of what went out that a step of what comes in may be worth [1].</summary>
    private const double StepsWorth = 3;

    /// <summary>Steps of finer scales [g], the coarsest first; kitchens have scales that show a hundredth of a gram.</summary>
    private static readonly ImmutableArray<double> FinerSteps = [0.5, 0.2, 0.1, 0.05, 0.02, 0.01];

    private LeaveningChemistry Chemistry => Bakehouse.Rise.Acidity.Chemistry;

    /// <summary>Whether something is an acid, a base or a powder that is replaced by equivalents.</summary>
    public static bool Leavens(Ingredient ingredient) => ingredient.Role switch
    {
        Role.Acid => Acid(ingredient) > 0,
        Role.Base => Base(ingredient) > 0,
        Role.LeaveningBlend => Acid(ingredient) > 0 && Base(ingredient) > 0,
        _ => false,
    };

    /// <summary>Whether things together can stand in for something: acids for an acid, bases for a base, a powder for any, a base and acids for a powder.</summary>
    /// <param name="from">What goes out.</param>
    /// <param name="with">What is to come in; one to three.</param>
    public static bool CanStandIn(Ingredient from, ImmutableArray<Ingredient> with)
    {
        bool All(params ReadOnlySpan<Role> roles)
        {
            var known = roles.ToArray();
            return with.All(one => Leavens(one) && known.Contains(one.Role));
        }

        return with is [{ Role: Role.LeaveningBlend } powder] ? Leavens(powder) : from.Role switch
        {
            Role.Acid => All(Role.Acid),
            Role.Base => All(Role.Base),
            _ => All(Role.Acid, Role.Base) && with.Any(one => one.Role == Role.Acid),
        };
    }

    /// <summary>Everything in the pantry that may stand in, one kit each.</summary>
    /// <param name="from">What goes out.</param>
    /// <param name="replaced">How much of it [g].</param>
    /// <param name="mayMoveOthers">Whether there are other lines that a powder's own soda or acid can be taken off from.</param>
    internal IEnumerable<LeaveningKit> Usual(Ingredient from, Grams replaced, bool mayMoveOthers)
    {
        var leaveners = Bakehouse.Pantry.Offered
            .Where(one => Leavens(one) && !one.Equals(from) && Bakehouse.Balances.Know(one) && !IsForFlatGoods(one))
            .ToList();
        foreach (var one in leaveners)
        {
            var isAlone = one.Role == from.Role || (one.Role == Role.LeaveningBlend && mayMoveOthers);
            if (isAlone)
            {
                yield return Of(from, replaced, [one]);
            }
            else if (from.Role == Role.LeaveningBlend && one.Role == Role.Acid)
            {
                yield return Of(from, replaced, [one]);
            }
        }
    }

    /// <summary>The kit of things that are asked for.</summary>
    /// <param name="from">What goes out.</param>
    /// <param name="replaced">How much of it [g].</param>
    /// <param name="with">What comes in; it can stand in.</param>
    internal LeaveningKit Of(Ingredient from, Grams replaced, ImmutableArray<Ingredient> with)
    {
        var (acid, soda) = (Acid(from) * replaced.Value, Base(from) * replaced.Value);
        if (with is [{ Role: Role.LeaveningBlend } powder])
        {
            var grams = soda > 0 ? soda / Base(powder) : acid / Acid(powder);
            var (acidIn, baseIn) = (grams * Acid(powder), grams * Base(powder));
            // A powder for a powder keeps its own little surplus: the readings judge it.
            return from.Role == Role.LeaveningBlend
                ? new LeaveningKit([Dose(from, powder, grams, baseIn)], new Millimoles(0), new Millimoles(0))
                : new LeaveningKit([Dose(from, powder, grams, soda > 0 ? baseIn : acidIn)], new Millimoles(acidIn - acid), new Millimoles(baseIn - soda));
        }

        var acids = with.Where(one => one.Role == Role.Acid).ToList();
        var bases = with.Where(one => one.Role == Role.Base).ToList();
        if (soda > 0 && bases.Count == 0)
        {
            bases.Add(Soda());
        }

        var shares = Shares(from, acids);
        return new LeaveningKit(
            [
                .. bases.Where(_ => soda > 0).Select(one => Dose(from, one, soda / bases.Count / Base(one), soda / bases.Count)),
                .. acids.Select((one, place) => Dose(from, one, acid * shares[place] / Acid(one), acid * shares[place])),
            ],
            new Millimoles(0),
            new Millimoles(0));
    }

    /// <summary>The plain soda of the pantry: the base that every kitchen has.</summary>
    internal Ingredient Soda() => OfRole(Role.Base);

    /// <summary>The acid that goes with soda where none is named: the offered one that is dry and acts first.</summary>
    internal Ingredient PlainAcid() => OfRole(Role.Acid);

    private Ingredient OfRole(Role role) => Bakehouse.Pantry.Offered
        .Where(one => one.Role == role && Leavens(one) && one.Usage.Offered && Bakehouse.Balances.Know(one) && one.Typical[Fact.Water] < 0.1 && Chemistry.TryGet(one, out _))
        // The one that bakers name first: of the bases sodium's, of the acids the mildest a gram.
        .OrderByDescending(one => one.Typical[Fact.Sodium])
        .ThenBy(one => Acid(one))
        .First();

    /// <summary>A dose on the scale. A strong acid for a weak one is weighed so finely that the way back ends at the first dose, within
    /// its own step: half a step of what comes in may be worth one and a half steps of what went out, for those are rounded again.</summary>
    private LeaveningDose Dose(Ingredient from, Ingredient ingredient, double grams, double equivalents)
    {
        var usual = Habits.StepOf(ingredient);
        var worth = (from.Role, ingredient.Role) switch
        {
            (Role.Acid, Role.Acid) => Acid(ingredient) / Acid(from),
            (Role.Base, Role.Base) => Base(ingredient) / Base(from),
            // Of soda and acid for a powder there is no one way back.
            _ => 0,
        };
        var step = FinerSteps.Prepend(usual.Value)
            .Where(finer => finer <= usual.Value)
            .FirstOrDefault(finer => finer * worth < StepsWorth * Habits.StepOf(from).Value, FinerSteps[^1]);
        var weighed = FormulaModel.OnStep(grams, step);
        return new LeaveningDose(ingredient, new Grams(grams), weighed, new Millimoles(equivalents))
        {
            FinerStep = weighed != FormulaModel.OnStep(grams, usual.Value) ? new Grams(step) : null,
        };
    }

    /// <summary>Shares of acids in one dose: two are mixed so that the gas comes when it came before, if they can; three evenly.</summary>
    private double[] Shares(Ingredient from, List<Ingredient> acids)
    {
        if (acids.Count != 2 || InMixing(from) is not { } wanted || InMixing(acids[0]) is not { } one || InMixing(acids[1]) is not { } other || one == other)
        {
            return [.. acids.Select(_ => 1.0 / acids.Count)];
        }

        var share = Math.Clamp((wanted - other) / (one - other), LeastShare, MostShare);
        return [share, 1 - share];
    }

    /// <summary>Share of its gas that an acid, or the acids of a powder, free in mixing [%]; null where that is not known.</summary>
    private double? InMixing(Ingredient ingredient) => Chemistry.TryGet(ingredient, out var leavener)
        ? leavener switch
        {
            PureAcid pure => pure.Timing.MixingPercent.Range.Typical,
            FoodAcid food => food.Timing.MixingPercent.Range.Typical,
            LeaveningBlend blend => InMixing(blend),
            _ => null,
        }
        : null;

    private double InMixing(LeaveningBlend blend)
    {
        var acids = blend.Parts.Where(part => part.Of is PureAcid)
            .Select(part => (Acid: (PureAcid)part.Of, Weight: part.Percent.Range.Typical * ((PureAcid)part.Of).Counted(Chemistry.Constants.SodaGramsPerMole).Value))
            .ToList();
        return acids.Sum(part => part.Weight * part.Acid.Timing.MixingPercent.Range.Typical) / acids.Sum(part => part.Weight);
    }

    /// <summary>Baker's ammonia stays in loaves: it stands in only where it is asked for.</summary>
    private bool IsForFlatGoods(Ingredient ingredient) =>
        Chemistry.TryGet(ingredient, out var leavener) && leavener is Bicarbonate { FreedByHeatPercent.Range.Typical: >= 100 };

    private static double Acid(Ingredient ingredient) => Known(ingredient, Fact.Acid);

    private static double Base(Ingredient ingredient) => Known(ingredient, Fact.Base);

    private static double Known(Ingredient ingredient, Fact fact) => ingredient.RangeOf(fact) is null ? 0 : ingredient.Typical[fact];
}
