using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Questions;

/// <summary>Every ingredient of a formula against everything that could stand in its place, and against nothing at all.</summary>
/// <param name="Formula">The formula.</param>
/// <param name="Only">The ingredients to look at; empty for all of the formula's.</param>
/// <param name="Habits">How the kitchen wants its answers.</param>
public sealed record SwapChart(Formula Formula, ImmutableHashSet<Ingredient> Only, Habits Habits)
{
    /// <summary>Most replacements that are looked at for one ingredient, the ones that bind, wet or leaven most like it first.</summary>
    private const int MostForOne = 20;

    /// <summary>The pairs, in the order of the formula's lines; that of leaving the line out comes first.</summary>
    public ImmutableArray<ChartPair> Pairs(Bakehouse bakehouse)
    {
        var reference = Formula.Merged();
        return
        [
            .. reference.Lines
                .Select(line => line.Ingredient)
                .Where(ingredient => Only.IsEmpty || Only.Contains(ingredient))
                .SelectMany(from => Replacements(bakehouse, reference, from).Select(to => new ChartPair(from, to)).Prepend(new ChartPair(from, null))),
        ];
    }

    /// <summary>Judges the pairs one after another, as they are found. Ends early where the time runs out.</summary>
    /// <param name="search">The solving.</param>
    /// <param name="pairs">The pairs.</param>
    /// <param name="clock">Time left.</param>
    /// <param name="cancel">Stops the search.</param>
    public IEnumerable<ChartedSwap> Trace(AnswerSearch search, ImmutableArray<ChartPair> pairs, Deadline clock, CancellationToken cancel)
    {
        // One search for all pairs: the same bag of flour, drawn once, stands in every one of them.
        var solve = new ChartSolve(search, Formula, Habits);
        foreach (var pair in pairs)
        {
            if (clock.IsOver || solve.Judge(pair, clock, cancel) is not { } charted)
            {
                yield break;
            }

            yield return charted;
        }
    }

    private IEnumerable<Ingredient> Replacements(Bakehouse bakehouse, Formula reference, Ingredient from) =>
        new Candidates(bakehouse) { Named = Habits.Named }.For(reference, [LeavingOut.BySwap(from)])
            .Where(candidate => IsOfTheKind(from.Role, candidate.Role))
            .OrderBy(candidate => Unlikeness(from, candidate))
            .ThenBy(candidate => candidate.Id, StringComparer.Ordinal)
            .Take(MostForOne);

    /// <summary>Soda and baking powder are put in each other's place; all others keep to their role.</summary>
    private static bool IsOfTheKind(Role gone, Role role) =>
        role == gone || (gone is Role.Base or Role.LeaveningBlend && role is Role.Base or Role.LeaveningBlend);

    /// <summary>How far two ingredients of a role lie apart in what a batter notices of them, by composition alone.</summary>
    private static double Unlikeness(Ingredient one, Ingredient other) =>
        Noticed.Sum(fact => Math.Abs(one.Typical[fact] - other.Typical[fact]));

    private static readonly ImmutableArray<Fact> Noticed = [Fact.Water, Fact.Fat, Fact.Protein, Fact.Fibre, Fact.WaterBound, Fact.Acid, Fact.Base];
}
