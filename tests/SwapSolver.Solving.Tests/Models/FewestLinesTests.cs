using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;
using Xunit.Abstractions;

namespace SwapSolver.Solving.Tests.Models;

/// <summary>A case so small that every choice can be tried: four lines, six ingredients that may be new, eggs by weight.</summary>
public sealed class FewestLinesTests(ITestOutputHelper output)
{
    private static readonly string[] Offered =
        ["sunflower-seed-flour", "pumpkin-seed-flour", "sesame-meal", "olive-oil", "water", "psyllium-husk-powder"];

    private static readonly Formula Four = Bowl.Of(
        ("almond-flour-blanched", 200), ("almond-drink-unsweetened", 90), ("egg-whole", 150), ("baking-powder-double-acting", 9));

    [Theory]
    [InlineData("almond-flour-blanched")]
    [InlineData("tree-nuts")]
    [InlineData("almond-drink-unsweetened")]
    public void No_choice_of_lines_is_cheaper_or_changes_fewer_than_the_answer(string without)
    {
        var problem = Ask.Variant(Four, Ask.Without(without)).Problem() with
        {
            Candidates = [.. Offered.Select(TestKitchen.Ingredient).Where(one => !Ask.Without(without).LeftOut!.Carries(one) && Four.MassOf(one) == Grams.None)],
            Habits = Habits.Usual with { WeighedEgg = true },
        };
        var model = FormulaModel.Build(problem, wholeSteps: false).Model;
        var best = Ask.Search.Solver.Solve(model, TimeSpan.FromSeconds(30), CancellationToken.None);
        Assert.Equal(Outcome.Optimal, best.Outcome);

        int[] choices = [.. Enumerable.Range(0, model.Columns.Count).Where(column => model.Columns[column].IsWhole)];
        var tried = 0;
        var cheapest = double.PositiveInfinity;
        var fewest = int.MaxValue;
        for (var picked = 0; picked < 1 << choices.Length; picked++)
        {
            // Which lines move and which are in the bowl is given; what is left are grams, and no choice.
            var given = model.Columns.ToList();
            for (var bit = 0; bit < choices.Length; bit++)
            {
                var taken = (picked >> bit) & 1;
                given[choices[bit]] = given[choices[bit]] with { Low = taken, High = taken, IsWhole = false };
            }

            var solution = Ask.Search.Solver.Solve(model with { Columns = given }, TimeSpan.FromSeconds(30), CancellationToken.None);
            tried++;
            if (solution.HasPoint)
            {
                cheapest = Math.Min(cheapest, solution.Objective);
                fewest = Math.Min(fewest, Lines(model, solution.Values));
            }
        }

        output.WriteLine($"{tried} choices, fewest lines {fewest}, objective {cheapest}");
        Assert.Equal(cheapest, best.Objective, 1e-6);
        Assert.Equal(fewest, Lines(model, best.Values));
    }

    /// <summary>Lines that count as changed or as new.</summary>
    private static int Lines(Model model, IReadOnlyList<double> values) => Enumerable.Range(0, values.Count)
        .Count(column => values[column] > 0.5 && model.Columns[column] is { IsWhole: true, Cost: > 0 });
}
