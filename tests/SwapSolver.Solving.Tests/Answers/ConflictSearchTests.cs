using System.Globalization;
using System.Text.RegularExpressions;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Loaves;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;
using Xunit.Abstractions;

namespace SwapSolver.Solving.Tests.Answers;

public sealed class ConflictSearchTests(ITestOutputHelper output)
{
    private const string NewIngredients = "new-ingredients";

    private static readonly ConflictSearch Search = new(Ask.Solve, TestKitchen.Bakehouse.Phrases);

    /// <summary>Questions that nothing meets, found by asking; each with the wishes that fight.</summary>
    private static readonly Lazy<(string Name, FormulaProblem Problem, List<Conflict> Fighting)[]> Hopeless = new(
    [
        .. from loaf in Loaf.All
           from wishes in Wishes
           let problem = Ask.Variant(loaf.Formula, wishes).Problem()
           where Ask.CanBeMet(problem) == Outcome.Infeasible
           select (
               $"{loaf.Name} with {string.Join(" and ", wishes.Select(wish => wish.Id + wish.Band.High?.Value.ToString(CultureInfo.InvariantCulture)))}",
               problem,
               Search.Find(problem, Ask.Ample, CancellationToken.None).Wishes.ToList()),
    ]);

    private static Hold[][] Wishes =>
    [
        [Ask.NetCarbs(0.05)],
        [Ask.NetCarbs(0.4)],
        [Ask.NetCarbs(1), Ask.Without("egg")],
        [Ask.Without("egg"), Ask.Without("water")],
        [Ask.Without("egg"), Ask.Without("psyllium"), Ask.Without("gums")],
        [Ask.Without("tree-nuts"), Ask.Without("seeds"), Ask.Without("grains"), Ask.Without("legumes"), Ask.Without("starches"), Ask.Without("coconut")],
    ];

    [Fact]
    public void Of_wishes_that_fight_any_one_may_go_and_the_rest_can_be_met()
    {
        output.WriteLine($"{Hopeless.Value.Length} hopeless questions");
        Assert.True(Hopeless.Value.Length >= 20, $"only {Hopeless.Value.Length} questions are hopeless");
        foreach (var (name, problem, fighting) in Hopeless.Value)
        {
            var set = fighting.Select(one => one.Wish).ToHashSet();
            output.WriteLine($"{name}: {string.Join(", ", set)}");
            Assert.True(set.Count > 0, $"{name}: nobody fights");
            Assert.Equal(Outcome.Infeasible, Ask.CanBeMet(Only(problem, set)));
            foreach (var wish in set)
            {
                Assert.True(
                    Ask.CanBeMet(Only(problem, [.. set.Except([wish])])) == Outcome.Optimal,
                    $"{name}: the set still fights without {wish}");
            }
        }
    }

    [Fact]
    public void What_the_caller_wished_is_part_of_every_conflict() =>
        // The loaves keep their own bands, so a hopeless question is hopeless through what was asked of it.
        Assert.All(Hopeless.Value, one => Assert.Contains(
            one.Fighting,
            conflict => one.Problem.Holds.Any(hold => hold.FromCaller && hold.Id == conflict.Wish)));

    [Fact]
    public void A_value_that_would_do_does_where_it_is_asked_for()
    {
        Assert.True(Relaxed.Count() >= 15, $"only {Relaxed.Count()} values were given");
        Expect.None(
            from one in Relaxed
            let level = one.Conflict.RelaxedValue!.Value.Value
            where !Met(one.Problem, level)
            select $"{one.Name}: {level} does not do");
    }

    [Fact]
    public void The_value_in_the_sentence_does_as_well() =>
        // Whoever reads "1.75 would do" asks for 1.75 and not for 1.7505.
        Expect.None(
            from one in Relaxed
            let said = Regex.Match(one.Conflict.Words, "([0-9.]+) would do").Groups[1].Value
            where !Met(one.Problem, double.Parse(said, CultureInfo.InvariantCulture))
            select $"{one.Name}: {said} of {one.Conflict.RelaxedValue} does not do");

    [Fact]
    public void The_nearest_formula_leaves_out_what_was_to_be_left_out() =>
        Expect.None(
            from one in Hopeless.Value
            let nearest = Search.Nearest(one.Problem, Ask.Ample, CancellationToken.None)
            where nearest is not null
            from line in nearest.Lines
            where one.Problem.IsLeftOut(line.Ingredient)
            select $"{one.Name}: {line.Ingredient.Id}");

    private static IEnumerable<(string Name, FormulaProblem Problem, Conflict Conflict)> Relaxed =>
        from one in Hopeless.Value
        from conflict in one.Fighting
        where conflict.Wish == "net-carbohydrate" && conflict.RelaxedValue is not null
        select (one.Name, one.Problem, conflict);

    private static bool Met(FormulaProblem problem, double cap) =>
        Ask.Solve.Run(
            problem with { Holds = [.. problem.Holds.Where(hold => hold.Id != "net-carbohydrate"), Ask.NetCarbs(cap)] },
            Ask.Ample,
            CancellationToken.None).Formula is not null;

    /// <summary>The problem with these wishes alone. The mass of roles and of the batter is nobody's wish and stays.</summary>
    private static FormulaProblem Only(FormulaProblem problem, HashSet<string> wishes) => problem with
    {
        Holds = [.. problem.Holds.Where(hold => wishes.Contains(hold.Id) || (!hold.FromCaller && hold.Balance is RoleMass or BatterMass))],
        Habits = problem.Habits with
        {
            WeighedEgg = !wishes.Contains("whole-eggs"),
            NewIngredients = wishes.Contains(NewIngredients) ? problem.Habits.NewIngredients : problem.Candidates.Length,
        },
    };
}
