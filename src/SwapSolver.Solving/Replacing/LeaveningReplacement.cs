using System.Collections.Immutable;
using SwapSolver.Forecasts;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Replacing;

/// <summary>An acid, a base or a powder replaced at equal millimoles: no search, for the doses follow from the chemistry.</summary>
/// <param name="Bakehouse">Everything that is known.</param>
/// <param name="Bags">The bags of this question.</param>
/// <param name="Wishes">Limits on readings.</param>
/// <param name="Habits">How the kitchen weighs.</param>
internal sealed record LeaveningReplacement(Bakehouse Bakehouse, Bags Bags, ImmutableArray<Hold> Wishes, Habits Habits)
{
    private LeaveningKits Kits => new(Bakehouse, Habits);

    private KitInBowl Bowl => new(Bakehouse, Habits);

    private ReplacementWords Words => new(Bakehouse);

    /// <summary>The answers, best first.</summary>
    /// <param name="formula">The formula; null for a dose by itself.</param>
    /// <param name="from">What goes out.</param>
    /// <param name="dose">How much of it there is [g].</param>
    /// <param name="kept">How much of it stays [g]; less than there is.</param>
    /// <param name="with">What is to come in; empty for whatever can.</param>
    /// <param name="most">Most answers.</param>
    public Outcomes Answer(Formula? formula, Ingredient from, Grams dose, Grams kept, ImmutableArray<Ingredient> with, int most)
    {
        var replaced = dose - kept;
        var title = Words.Title(dose, from);
        var reference = formula?.Merged() ?? new BareBowl(Bakehouse, Kits).Of(title, from, dose);
        List<LeaveningKit> kits = with.IsEmpty
            ? [.. Kits.Usual(from, replaced, mayMoveOthers: formula is not null).Where(kit => kit.Doses.All(one => one.Weighed > Grams.None && KeepsWhatItIs(reference, one.Ingredient)))]
            : [Kits.Of(from, replaced, with)];
        var found = kits
            .Select(kit => Judge(formula, reference, from, kept, kit, with))
            .OfType<JudgedReplacement>()
            .OrderBy(one => one.Missed.Length)
            .ThenBy(one => one.BringsAllergen)
            .ThenBy(one => one.IsAboveUsage)
            .ThenByDescending(one => one.IsUsual)
            .ThenBy(one => one.ChangedLines + (one.NeedsHand ? 1 : 0))
            .ThenBy(one => Math.Abs(one.MoreInMixing.Value))
            .ThenBy(one => one.Formula.BatterMass)
            .ToList();
        var good = found.Where(one => one.Missed.IsEmpty).ToList();
        if (good.Count == 0)
        {
            return new Outcomes([], [.. found.Take(1).SelectMany(one => one.Missed)], found.FirstOrDefault()?.Answer, EndedEarly: false);
        }

        var told = good.Where(one => Habits.Sureness is not { } least || one.Answer.ChanceOfBalance >= least.Share).Take(most).ToImmutableArray();
        return told.IsEmpty
            ? Unsure(Habits.Sureness!.Value, good.Select(one => one.Answer).MaxBy(answer => answer.ChanceOfBalance)!)
            : new Outcomes([.. told.Select(one => one.Answer)], [], null, EndedEarly: false)
            {
                Further = Habits.Sureness is null ? [.. good.Except(told).Select(one => one.Replaced)] : [],
            };
    }

    /// <summary>Where the wish for sureness is all that stands in the way.</summary>
    private Outcomes Unsure(Percent wanted, Answer surest)
    {
        var most = new Level(Math.Floor(surest.ChanceOfBalance * 100));
        var words = Bakehouse.Phrases.Say(
            "conflict-sureness", ("count", NumberWords.Level(new Level(wanted.Value))), ("value", NumberWords.Level(most)));
        return new Outcomes([], [new Conflict("sureness", most, words)], surest, EndedEarly: false);
    }

    private JudgedReplacement? Judge(
        Formula? original, Formula reference, Ingredient from, Grams kept, LeaveningKit kit, ImmutableArray<Ingredient> with)
    {
        if (Bowl.Put(reference, from, kept, kit) is not { } put)
        {
            return null;
        }

        var isWhole = original is not null;
        if (isWhole && Wishes.Any(wish => !wish.Balance.CanRead(put.Formula)))
        {
            // What has no price cannot come in under a price.
            return null;
        }

        var (before, after) = (Sketch(reference), Sketch(put.Formula));
        var details = Details(reference, put.Formula, kit, put.WaterMore, put.WaterLeft, before, after, isWhole);
        var holds = Holds(reference, from, kept, isWhole);
        var shown = isWhole ? put.Formula : Shown(reference, put.Formula, from);
        var shownBefore = isWhole ? reference : Shown(reference, reference, from);
        var kinds = reference.Lines.SelectMany(line => line.Ingredient.Allergens.OnEitherList).ToHashSet();
        var missed = Recheck.BrokenHolds(holds, reference, put.Formula, Draws.Typical).ToList();
        return new JudgedReplacement(
            put.Formula,
            details,
            [.. missed.Select(hold => Missed(hold, reference, put.Formula, isAlone: missed.Count == 1))],
            Words.Changes(shownBefore, shown, from, details).Length,
            BringsAllergen: with.IsEmpty && kit.Doses.Any(dose => dose.Ingredient.Allergens.OnEitherList.Except(kinds).Any()),
            IsAboveUsage: isWhole && kit.Doses.Any(dose => IsAboveUsage(put.Formula, dose.Ingredient)),
            IsUsual: kit.Doses.All(dose => dose.Ingredient.Usage.Offered),
            NeedsHand: Math.Abs(put.WaterLeft.Value) >= KitInBowl.LeastWater,
            new Percent(after.InMixing.Value - before.InMixing.Value),
            new Lazy<Answer>(() => Tell(reference, put.Formula, shownBefore, shown, from, details, holds, isWhole)));
    }

    /// <summary>The answer in full: its readings and its chance in many kitchens.</summary>
    private Answer Tell(
        Formula reference, Formula formula, Formula shownBefore, Formula shown, Ingredient from, ReplacedLeavening details, ImmutableArray<Hold> holds, bool isWhole)
    {
        using var samples = new FactSamples(reference, formula, Bags);
        var balances = samples.Balances(holds, reference, formula);
        var readings = isWhole
            ? Readings.Of(Bakehouse.Balances.Ratios.Union(Wishes.Select(wish => wish.Balance)), holds, formula, reference, samples)
            : [];
        return new Answer(
            shown,
            readings,
            Words.Changes(shownBefore, shown, from, details),
            isWhole ? new CautionList(Bakehouse).Of(reference, formula, []) : new CautionList(Bakehouse).OfDoses(shownBefore, shown),
            balances.Count(keeps => keeps) / (double)balances.Length,
            Readings.Binding(readings),
            Words.Notes(from, details, isWhole),
            IsBestSoFar: false)
        {
            Replaced = details,
            Decisive = new DecisiveFacts(Bakehouse.Phrases).Of(samples, balances, holds),
        };
    }

    private ReplacedLeavening Details(
        Formula reference, Formula formula, LeaveningKit kit, Grams waterMore, Grams waterLeft, RiseSketch before, RiseSketch after, bool isWhole)
    {
        double Sum(Formula of, Fact fact) => of.Lines.Sum(line => line.Ingredient.RangeOf(fact) is null ? 0 : line.Ingredient.Typical[fact] * line.Grams.Value);
        Grams More(Fact fact) => new(Sum(formula, fact) - Sum(reference, fact));
        var sodium = More(Fact.Sodium);
        var salt = Bakehouse.Pantry.Offered.Where(one => one.Role == Role.Salt).MaxBy(one => one.Typical[Fact.Sodium])!;
        var saltMore = new Grams(-sodium.Value / salt.Typical[Fact.Sodium]);
        var practice = Bakehouse.Rise.Practice;
        var timing = Words.Timing(before, after);
        return new ReplacedLeavening(
            new Millimoles(kit.Doses.Sum(dose => dose.Exact.Value * dose.Ingredient.Typical[Fact.Acid])),
            new Millimoles(kit.Doses.Sum(dose => dose.Exact.Value * dose.Ingredient.Typical[Fact.Base])),
            kit.Doses,
            waterMore,
            waterLeft,
            sodium,
            More(Fact.Potassium),
            saltMore,
            // A pinch of salt is lost in a loaf that holds a spoonful; of a dose by itself nobody knows the loaf.
            Math.Abs(isWhole ? 100 * sodium.Value / Sum(reference, Fact.Sodium) : saltMore.Value)
                >= (isWhole ? practice.SaltTastedPercent : practice.SaltTastedGrams).Range.Typical,
            More(Fact.Sweetness),
            timing,
            Words.Say(timing, before, after),
            before.WorkingWindow,
            after.WorkingWindow,
            isWhole ? before.Crumb : null,
            isWhole ? after.Crumb : null);
    }

    private RiseSketch Sketch(Formula formula) => Bakehouse.Rise.Sketch(
        formula, RiseConditions.Usual(Bakehouse.Rise.Practice, new Metres(0)), Draws.Typical);

    /// <summary>What must hold: the default bands and the caller's wishes. Liquids are not held by their mass, for a liquid acid
    /// is a liquid too. A dose by itself is held by its leavening alone.</summary>
    private ImmutableArray<Hold> Holds(Formula reference, Ingredient from, Grams kept, bool isWhole)
    {
        var balances = Bakehouse.Balances;
        if (!isWhole)
        {
            return [new Hold(balances.Leavening.Id, balances.Leavening, balances.Leavening.Settings.Fixed, FromCaller: false)];
        }

        ImmutableArray<Hold> swapped = kept == Grams.None ? [LeavingOut.BySwap(from)] : [];
        return [.. HoldList.Around(balances, reference, [.. swapped, .. Wishes]).Where(hold => hold.Balance is not RoleMass { Role: Role.Liquid })];
    }

    private Conflict Missed(Hold hold, Formula reference, Formula formula, bool isAlone)
    {
        var level = hold.Balance.Read(formula, reference, Draws.Typical)!.Value;
        return new Conflict(hold.Id, isAlone ? level : null, Bakehouse.Phrases.Say(
            "replace-missed",
            ("title", hold.Balance.Settings.Title),
            ("value", NumberWords.Level(level)),
            ("low", hold.Band.Low is { } low ? NumberWords.Level(low) : "0"),
            ("high", hold.Band.High is { } high ? NumberWords.Level(high) : "any")));
    }

    /// <summary>Of a bare bowl, what was asked about and what came in: the soda that was put beside it is nobody's line.</summary>
    private static Formula Shown(Formula reference, Formula formula, Ingredient from) => formula with
    {
        Lines = [.. formula.Lines.Where(line => line.Ingredient.Equals(from) || line.Grams != reference.MassOf(line.Ingredient))],
    };

    private static bool KeepsWhatItIs(Formula reference, Ingredient one)
    {
        var present = reference.Lines.Select(line => line.Ingredient).ToList();
        return (one.Suits.GlutenFree || present.Any(other => !other.Suits.GlutenFree))
            && (one.Suits.Vegan || present.Any(other => !other.Suits.Vegan))
            && (one.Suits.Vegetarian || present.Any(other => !other.Suits.Vegetarian));
    }

    private static bool IsAboveUsage(Formula formula, Ingredient one) =>
        formula.MassOf(one) > one.Usage.Most(formula.MassOf(Role.Flour), formula.BatterMass);
}
