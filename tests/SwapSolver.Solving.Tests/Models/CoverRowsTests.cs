using SwapSolver.Kitchen.Formulas;
using SwapSolver.Loaves;
using SwapSolver.Loaves.Kitchens;
using SwapSolver.Solving.Models;

namespace SwapSolver.Solving.Tests.Models;

/// <summary>What is missing where every line stays as it is must come from lines that change.</summary>
public sealed class CoverRowsTests
{
    private const string Cover = "cover_";

    /// <summary>Almond flour 100, sunflower flour 100, water 100, soda 4, cream of tartar 9, two eggs.</summary>
    private static readonly Formula Two = Bowl.Of(
        ("almond-flour-blanched", 100), ("sunflower-seed-flour", 100), ("water", 100), ("baking-soda", 4), ("cream-of-tartar", 9)).WithEggs(2);

    [Fact]
    public void Without_half_of_its_flour_a_loaf_needs_lines_that_make_up_for_it()
    {
        // Flour may go down to 0.92 of its 200 g; 100 g stay, so 84 g are missing, and a line counts with the share of them
        // that its most could bring (at most all of them).
        var problem = Ask.Variant(Two, Ask.Without("tree-nuts")).Problem();
        var built = FormulaModel.Build(
            problem with { Candidates = [TestKitchen.Ingredient("flaxseed-ground"), TestKitchen.Ingredient("sesame-flour")] }, wholeSteps: false);
        var row = Row(built.Model, "cover_flour_mass_Low");
        Assert.Equal((1, double.PositiveInfinity), (row.Low, row.High));
        var flours = built.Lines.Where(line => row.Terms.Any(term => term.Column == line.Choice)).ToList();
        Assert.Contains(flours, line => line.Ingredient.Id == "sunflower-seed-flour");
        Assert.All(flours, line =>
        {
            var brings = built.Model.Columns[line.Column].High - (line.IsNew ? 0 : 100);
            Assert.Equal(Math.Min(1, brings / 84), row.Terms.Single(term => term.Column == line.Choice).Coefficient, 1e-4);
        });
    }

    [Fact]
    public void A_line_counts_with_what_it_can_gain_and_not_with_what_it_has()
    {
        // Of 413 g the almond flour goes: 313 g stay, and 0.95 of 413 are to be kept, so 79.35 g are missing; water may gain 35.
        var built = new BuiltModel(Ask.Variant(Two, Ask.Without("tree-nuts")).Problem() with { Candidates = [TestKitchen.Ingredient("sesame-flour")] });
        Assert.Equal(35 / 79.35, built.Coefficient("cover_batter_mass_Low_" + Number(built), "changed_water"), 1e-4);

        static string Number(BuiltModel built) => built.Whole.Model.Rows.First(row => row.Name.StartsWith("batter_mass_Low", StringComparison.Ordinal)).Name.Split('_')[^1];
    }

    [Fact]
    public void A_loaf_that_keeps_its_bands_as_it_is_has_no_such_row() =>
        Assert.DoesNotContain(
            FormulaModel.Build(Ask.Variant(Two, Ask.Without("milk")).Problem(), wholeSteps: false).Model.Rows,
            row => row.Name.StartsWith(Cover, StringComparison.Ordinal));

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Without_those_rows_the_best_of_random_kitchens_is_the_same(bool wholeSteps)
    {
        const int Kitchens = 60;
        var (rows, answered) = (0, 0);
        for (var number = 0; number < Kitchens; number++)
        {
            var kitchen = RandomKitchens.Of(number);
            var with = FormulaModel.Build(kitchen.Problem, wholeSteps).Model;
            var without = with with { Rows = [.. with.Rows.Where(row => !row.Name.StartsWith(Cover, StringComparison.Ordinal))] };
            rows += with.Rows.Count - without.Rows.Count;
            var (covered, plain) = (Solved(with), Solved(without));
            Assert.True(covered.Outcome == plain.Outcome, $"{kitchen.Name}: {covered.Outcome} with the rows, {plain.Outcome} without");
            if (plain.Outcome == Outcome.Optimal)
            {
                answered++;
                Assert.Equal(plain.Objective, covered.Objective, 1e-6 * Math.Max(1, Math.Abs(plain.Objective)));
            }
        }

        Assert.True(rows > Kitchens, $"only {rows} rows in {Kitchens} kitchens");
        Assert.True(answered > Kitchens / 3, $"only {answered} of {Kitchens} kitchens have an answer");
    }

    private static Solution Solved(Model model) => Ask.Search.Solver.Solve(model, TimeSpan.FromMinutes(2), CancellationToken.None);

    private static ModelRow Row(Model model, string name) => model.Rows.First(row => row.Name.StartsWith(name, StringComparison.Ordinal));
}
