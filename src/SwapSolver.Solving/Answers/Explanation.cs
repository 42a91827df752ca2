using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Answers;

/// <summary>Says why each line differs. A reason is found by undoing that one change and reading the balances again:
/// what then falls out of its band is what the change is for.</summary>
/// <param name="Phrases">The words.</param>
public sealed record Explanation(Phrases Phrases)
{
    /// <summary>Reasons that a sentence bears: the two balances that would be missed by most.</summary>
    private const int ReasonsSaid = 2;

    /// <summary>The lines that differ, those that go out first.</summary>
    /// <param name="original">The formula as the caller gave it.</param>
    /// <param name="problem">What was asked.</param>
    /// <param name="formula">The answer.</param>
    public ImmutableArray<Change> Changes(Formula original, FormulaProblem problem, Formula formula)
    {
        var before = original.Merged();
        var ingredients = before.Lines.Select(line => line.Ingredient)
            .Union(formula.Lines.Select(line => line.Ingredient));
        return
        [
            .. ingredients
                .Select(ingredient => (Ingredient: ingredient, Before: LineOf(before, ingredient), After: LineOf(formula, ingredient)))
                // In a larger loaf a line that keeps its grams has changed its share, so all lines are told.
                .Where(pair => problem.ScaledFrom is not null || (pair.Before?.Grams ?? Grams.None) != (pair.After?.Grams ?? Grams.None))
                .Select(pair => new Change(
                    pair.Ingredient,
                    pair.Before?.Grams ?? Grams.None,
                    pair.After?.Grams ?? Grams.None,
                    pair.Before?.Count ?? (pair.Before is null && pair.After?.Count is not null ? 0 : null),
                    pair.After?.Count ?? (pair.After is null && pair.Before?.Count is not null ? 0 : null),
                    Reason(problem, formula, pair.Ingredient)))
                .OrderBy(change => change.After == Grams.None ? 0 : change.Before == Grams.None ? 1 : 2),
        ];
    }

    private string Reason(FormulaProblem problem, Formula formula, Ingredient ingredient)
    {
        if (problem.Holds.FirstOrDefault(hold => hold.LeftOut is { } rule && rule.Carries(ingredient)) is { } wish)
        {
            return Phrases.Say(wish.LeftOut!.IsCertainOf(ingredient) ? "reason-left-out" : "reason-left-out-not-stated", ("wish", wish.Balance.Settings.Title));
        }

        if (problem.Fixed.ContainsKey(ingredient))
        {
            return Phrases.Say("reason-proposed");
        }

        var start = problem.Start.MassOf(ingredient);
        var now = formula.MassOf(ingredient);
        if (now == start)
        {
            return Scaled(problem);
        }

        var undone = Undone(formula, ingredient, start);
        var missed = Recheck.BrokenHolds(problem.Holds, problem.Reference, undone, Draws.Typical)
            .Where(hold => hold.LeftOut is null)
            .OrderByDescending(hold => DistanceOf(hold, problem.Reference, undone))
            .Take(ReasonsSaid)
            .Select(hold => Missed(hold, problem.Reference, undone))
            .ToList();
        var all = Kitchen.Wording.Phrases.List(missed);
        if (start > Grams.None)
        {
            return missed.Count == 0
                ? Phrases.Say("reason-closer")
                : Phrases.Say("reason-moved", ("grams", NumberWords.Grams(start)), ("missed", all));
        }

        var why = missed.Count == 0 ? Phrases.Say("reason-new-closer") : Phrases.Say("reason-new", ("missed", all));
        var gone = problem.Start.Lines.Select(line => line.Ingredient).Where(problem.IsLeftOut).Distinct().ToList();
        var same = gone.Where(other => other.Role == ingredient.Role).ToList();
        return (same.Count, gone.Count) switch
        {
            // A flour for a flour explains itself.
            ( > 0, _) => Phrases.Say("reason-takes-place", ("gone", NamesOf(same))),
            (_, > 0) => Phrases.Say("reason-in-place", ("gone", NamesOf(gone)), ("why", why)),
            _ => why,
        };
    }

    private static string NamesOf(IEnumerable<Ingredient> ingredients) =>
        Kitchen.Wording.Phrases.List(ingredients.Select(ingredient => ingredient.Name));

    /// <summary>How far a reading lies outside its band, relative to the end that it misses. The rules of the crumb come
    /// before those of mere mass.</summary>
    private static double DistanceOf(Hold hold, Formula reference, Formula undone)
    {
        var level = hold.Balance.Read(undone, reference, Draws.Typical)!.Value.Value;
        var end = (hold.Band.Of(new Level(level)) == Standing.Below ? hold.Band.Low : hold.Band.High)!.Value.Value;
        var distance = Math.Abs(level - end) / Math.Max(end, 1e-9);
        return hold.Balance is RoleMass or BatterMass ? distance / 10 : distance;
    }

    private string Missed(Hold hold, Formula reference, Formula undone)
    {
        var level = hold.Balance.Read(undone, reference, Draws.Typical)!.Value;
        var isLow = hold.Band.Of(level) == Standing.Below;
        var (value, limit) = NumberWords.Apart(level, (isLow ? hold.Band.Low : hold.Band.High)!.Value);
        return Phrases.Say(
            isLow ? "missed-low" : "missed-high",
            ("meaning", isLow ? hold.Balance.Settings.BelowMeans : hold.Balance.Settings.AboveMeans),
            ("balance", hold.Balance.Settings.Title),
            ("value", value),
            ("limit", limit));
    }

    private string Scaled(FormulaProblem problem)
    {
        var factor = new Level(problem.Reference.BatterMass / (problem.ScaledFrom ?? problem.Reference).BatterMass);
        return factor.Value switch
        {
            > 1.0005 => Phrases.Say("reason-grows", ("factor", NumberWords.Level(factor))),
            < 0.9995 => Phrases.Say("reason-shrinks", ("factor", NumberWords.Level(factor))),
            _ => Phrases.Say("reason-stays"),
        };
    }

    private static Formula Undone(Formula formula, Ingredient ingredient, Grams start)
    {
        var others = formula.Lines.Where(line => !line.Ingredient.Equals(ingredient));
        return formula with { Lines = start > Grams.None ? [.. others, new Line(ingredient, start)] : [.. others] };
    }

    private static Line? LineOf(Formula formula, Ingredient ingredient) =>
        formula.Lines.FirstOrDefault(line => line.Ingredient.Equals(ingredient));
}
