using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;

namespace SwapSolver.Solving.Tests.Answers;

public sealed class FormulaSolveTests
{
    /// <summary>What rounding to the scale may count: readings move by some thousandths of a band, never by a changed line.</summary>
    private const double Scale = 0.1;

    [Theory]
    [InlineData("butter", "olive-oil")]
    [InlineData("tree-nuts", "coconut")]
    [InlineData("tree-nuts", "sesame")]
    [InlineData("egg", "lupin")]
    [InlineData("milk", "coconut")]
    public void One_wish_more_never_makes_a_better_loaf(string first, string second)
    {
        // The second wish is for something that is not in the bowl, so it only takes from the pantry. (A wish against a
        // line that is in the bowl also lets that line go, which nobody may do unasked; it can make a loaf better.)
        var judged = Loaf.All.Where(loaf => loaf.Formula.Lines.All(line => !Ask.Without(second).LeftOut!.Carries(line.Ingredient))).ToList();
        Assert.NotEmpty(judged);
        foreach (var (name, formula) in judged)
        {
            var one = Ask.Variant(formula, Ask.Without(first)).Problem();
            var both = one with { Holds = one.Holds.Add(Ask.Without(second)), Candidates = one.Candidates.RemoveAll(ingredient => Ask.Without(second).LeftOut!.Carries(ingredient)) };
            Assert.True(NotBetter(Best(both), Best(one), 1e-6), $"{name}: {Best(both)} beats {Best(one)}");
            Assert.True(NotBetter(Printed(both), Printed(one), Scale), $"{name}, in printed grams: {Printed(both)} beats {Printed(one)}");
        }
    }

    [Theory]
    [InlineData(2.5, 2.0)]
    [InlineData(2.0, 1.6)]
    [InlineData(1.6, 1.2)]
    public void A_tighter_cap_never_makes_a_better_loaf(double loose, double tight)
    {
        foreach (var (name, formula) in Loaf.All)
        {
            var wide = Ask.Variant(formula, Ask.NetCarbs(loose)).Problem();
            var narrow = Ask.Variant(formula, Ask.NetCarbs(tight)).Problem();
            Assert.True(NotBetter(Best(narrow), Best(wide), 1e-6), $"{name}: {Best(narrow)} beats {Best(wide)}");
            Assert.True(NotBetter(Printed(narrow), Printed(wide), Scale), $"{name}, in printed grams");
        }
    }

    [Fact]
    public void The_best_answer_comes_first_and_each_next_is_no_better()
    {
        foreach (var (name, formula) in Loaf.All)
        {
            var problem = Ask.Variant(formula, Ask.Without("egg")).Problem();
            var before = double.NegativeInfinity;
            for (var place = 0; place < 3; place++)
            {
                if (Ask.Solve.Run(problem, Ask.Ample, CancellationToken.None) is not { Formula: { } found } best)
                {
                    break;
                }

                Assert.True(best.Objective >= before - 1e-6, $"{name}: place {place + 1} counts {best.Objective}, the one before it {before}");
                before = best.Objective;
                var added = Recheck.NewIngredients(problem.Start, found);
                if (added.IsEmpty)
                {
                    break;
                }

                problem = problem with { Found = problem.Found.Add(added) };
            }
        }
    }

    [Fact]
    public void A_new_allergen_comes_in_only_where_doing_without_costs_two_lines_and_a_half()
    {
        // A new allergen counts 2.5 changed lines. So wherever one comes in, the best loaf without it counts at least
        // 2.5 more, once the allergen's own price is taken off.
        var brought = 0;
        foreach (var (name, formula) in Loaf.All)
        {
            foreach (var word in new[] { "tree-nuts", "egg", "milk", "water", "gluten-cereals" })
            {
                var problem = Ask.Variant(formula, Ask.Without(word)).Problem();
                if (Ask.Solve.Run(problem, Ask.Ample, CancellationToken.None) is not { Formula: { } found } best)
                {
                    continue;
                }

                var present = formula.Lines.SelectMany(line => Allergens(line.Ingredient)).ToHashSet();
                var bringing = Recheck.NewIngredients(problem.Start, found).Count(ingredient => Allergens(ingredient).Any(one => !present.Contains(one)));
                if (bringing > 0)
                {
                    brought++;
                    var without = Best(problem with { Candidates = problem.Candidates.RemoveAll(ingredient => Allergens(ingredient).Any(one => !present.Contains(one))) });
                    Assert.True(double.IsNaN(without) || without >= best.Objective - (2.5 * bringing) + 2.5 - Scale, $"{name} without {word}");
                }
            }
        }

        Assert.True(brought > 0, "no loaf brought in a new allergen, so nothing was judged");
    }

    [Fact]
    public void A_deadline_that_has_passed_still_leaves_a_millisecond()
    {
        // A native limit of nothing means no limit at all.
        var past = new Deadline(TimeProvider.System, DateTimeOffset.UnixEpoch);
        Assert.True(past.IsOver);
        Assert.Equal(TimeSpan.FromMilliseconds(1), past.Left);
    }

    [Fact]
    public void A_cancelled_question_ends_at_once()
    {
        using var cancelled = new CancellationTokenSource();
        cancelled.Cancel();
        Assert.Throws<OperationCanceledException>(
            () => Ask.Variant(Loaf.Walnut, Ask.Without("egg")).Answer(Ask.Search, Ask.Ample, cancelled.Token));
    }

    private static double Best(FormulaProblem problem) =>
        Ask.Search.Solver.Solve(FormulaModel.Build(problem, wholeSteps: false).Model, TimeSpan.FromMinutes(1), CancellationToken.None).Objective;

    private static double Printed(FormulaProblem problem) => Ask.Solve.Run(problem, Ask.Ample, CancellationToken.None).Objective;

    /// <summary>Whether one is no better than the other; what has no answer is the worst.</summary>
    private static bool NotBetter(double one, double other, double slack) =>
        double.IsNaN(one) || (!double.IsNaN(other) && one >= other - slack);

    private static System.Collections.Immutable.ImmutableArray<string> Allergens(Ingredient ingredient) => ingredient.Allergens.OnEitherList;
}
