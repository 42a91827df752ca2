using System.Collections.Immutable;
using System.Globalization;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Questions;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Benchmarks.Race;

/// <summary>Two hundred questions that grow with nothing: the invented loaves, each asked in the same ways.</summary>
public static class FixedQuestions
{
    /// <summary>How many there are.</summary>
    public const int Count = 200;

    private static readonly ImmutableArray<string> Words =
        ["tree-nuts", "egg", "dairy", "seeds", "coconut", "psyllium", "gums", "sugar-alcohols", "cocoa", "vinegar"];

    private static readonly ImmutableArray<double> Ceilings = [0.95, 0.9, 0.85, 0.8, 0.75, 0.7];

    private static readonly ImmutableArray<double> Factors = [0.5, 0.75, 1.25, 1.5, 1.75, 2, 2.5, 3];

    private static Bakehouse Bakehouse => TestKitchen.Bakehouse;

    /// <summary>The questions: those of each loaf in turn, kind by kind, so that a cut keeps all kinds.</summary>
    public static ImmutableArray<FixedQuestion> All()
    {
        var byLoaf = Loaf.All.Select(loaf => Of(loaf.Name, loaf.Formula).GetEnumerator()).ToList();
        var questions = ImmutableArray.CreateBuilder<FixedQuestion>();
        while (byLoaf.Count > 0 && questions.Count < Count)
        {
            byLoaf.RemoveAll(loaf => !loaf.MoveNext());
            questions.AddRange(byLoaf.Select(loaf => loaf.Current).Take(Count - questions.Count));
        }

        return questions.Count == Count
            ? questions.ToImmutable()
            : throw new InvalidOperationException($"there are {questions.Count} questions, not {Count}");
    }

    private static IEnumerable<FixedQuestion> Of(string loaf, Formula formula)
    {
        var kinds = new[] { Variants(formula), Limits(formula), Goals(formula), Sizes(formula), SizesWithin(formula) }
            .Select(asked => asked.GetEnumerator()).ToList();
        while (kinds.Count > 0)
        {
            kinds.RemoveAll(kind => !kind.MoveNext());
            foreach (var (kind, name, problem) in kinds.Select(kind => kind.Current))
            {
                // What the loaf already keeps asks nothing.
                if (Recheck.BrokenHolds(problem.Holds, problem.Start, problem.Reference, Draws.Typical).Any())
                {
                    yield return new FixedQuestion(kind, $"{loaf} {name}", FormulaModel.Build(problem, wholeSteps: false).Model);
                }
            }
        }
    }

    private static IEnumerable<(string Kind, string Name, FormulaProblem Problem)> Variants(Formula formula)
    {
        var leavingOut = new LeavingOut(Bakehouse.Pantry, Bakehouse.Phrases);
        return formula.Lines.Select(line => LeavingOut.Of(line.Ingredient))
            .Concat(Words.Select(word => leavingOut.Of(word)!))
            .Concat(Enum.GetValues<Diet>().Select(leavingOut.Of))
            .Select(wish => ("variant", wish.Id, new Variant(formula, [wish], Habits.Usual).Problem(Bakehouse)));
    }

    private static IEnumerable<(string Kind, string Name, FormulaProblem Problem)> Limits(Formula formula) =>
        Ceilings.Select(share => (
            "limit",
            string.Create(CultureInfo.InvariantCulture, $"net carbs at {share} of its own"),
            new Variant(formula, [NetCarbsAt(formula, share)], Habits.Usual).Problem(Bakehouse)));

    private static IEnumerable<(string Kind, string Name, FormulaProblem Problem)> Goals(Formula formula) =>
        Bakehouse.Goals.All
            .Where(goal => goal.Aims.All(aim => !aim.Balance.Reads.Contains(Fact.Price) && aim.Balance.Read(formula, formula, Draws.Typical)?.Value > 0))
            .Select(goal => ("reformulate", goal.Id, new Reformulate(formula, [goal], [], [], Habits.Usual).Problem(Bakehouse)));

    private static IEnumerable<(string Kind, string Name, FormulaProblem Problem)> Sizes(Formula formula) =>
        Factors.Select(factor => (
            "resize",
            string.Create(CultureInfo.InvariantCulture, $"times {factor}"),
            new Resize(formula, NewSize.Times(formula, factor), [], Habits.Usual).Problem(Bakehouse)));

    private static IEnumerable<(string Kind, string Name, FormulaProblem Problem)> SizesWithin(Formula formula) =>
        Factors.Where(factor => factor != 0.75).Select(factor => (
            "resize within a limit",
            string.Create(CultureInfo.InvariantCulture, $"times {factor}, net carbs at 0.9 of its own"),
            new Resize(formula, NewSize.Times(formula, factor), [NetCarbsAt(formula, 0.9)], Habits.Usual)
                .Problem(Bakehouse, Role.Flour, Role.Egg, Role.Liquid, Role.Gel)));

    private static Hold NetCarbsAt(Formula formula, double share)
    {
        var rule = Bakehouse.Balances.NetCarbohydrate;
        var own = rule.Read(formula, formula, Draws.Typical)!.Value.Value;
        return new Hold(rule.Id, rule, new Band(null, new Level(Math.Round(own * share, 4))), FromCaller: true);
    }
}
