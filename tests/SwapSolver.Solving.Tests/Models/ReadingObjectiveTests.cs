using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Models;

namespace SwapSolver.Solving.Tests.Models;

/// <summary>What a model costs whose best point has the best reading. The bowl as it is stands for any point: it is better than a
/// level that lies on the wrong side of its reading, and worse than one that lies beyond.</summary>
public sealed class ReadingObjectiveTests
{
    private static readonly Formula Five = Bowl.Of(
        ("almond-flour-blanched", 150), ("sunflower-seed-flour", 50), ("water", 100), ("baking-soda", 4), ("cream-of-tartar", 9));

    private readonly FormulaModel model = FormulaModel.Build(Ask.Variant(Five, Ask.Without("milk")).Problem() with { Candidates = [] }, wholeSteps: false);

    [Theory]
    // Fat is a share of the batter, a ratio. A tenth above its own reading the bowl is better by a tenth where less is better, and
    // worse by as much where more is; the reference's own sum counts 100.
    [InlineData("richness", Better.Lower, 1.1, -10)]
    [InlineData("richness", Better.Lower, 0.8, 20)]
    [InlineData("richness", Better.Higher, 1.1, 10)]
    [InlineData("richness", Better.Higher, 1, 0)]
    // Protein is counted a slice: a sum has no level in its columns, and what is told is the sum itself.
    [InlineData("protein", Better.Lower, 0.5, 100)]
    [InlineData("protein", Better.Higher, 0.5, -100)]
    public void A_bowl_is_better_than_a_level_by_what_it_beats_it_by(string id, Better better, double level, double costs)
    {
        var objective = Of(id, better);
        var own = objective.Balance.Read(Five, Five, Draws.Typical)!.Value.Value;
        Assert.Equal(id == "protein", objective.IsSum(model));
        Assert.Equal(costs, objective.In(model, new Level(level * own)).Objective(AsItIs()), 1e-9);
    }

    [Fact]
    public void A_reading_of_which_one_line_is_no_part_is_a_ratio_all_the_same() =>
        // Water binds none, so a gram of it adds nothing to what hydration is counted on; the flours' grams do.
        Assert.False(Of("hydration", Better.Higher).IsSum(model));

    [Fact]
    public void Choices_and_moves_cost_nothing_then()
    {
        var lines = model.Lines.Select(line => line.Column).ToHashSet();
        var costs = Of("richness", Better.Lower).In(model, new Level(0.2)).Columns.Select(column => column.Cost).ToList();
        Assert.All(Enumerable.Range(0, costs.Count).Where(column => !lines.Contains(column)), column => Assert.Equal(0, costs[column]));
        Assert.Contains(model.Model.Columns, column => column.Cost > 0);
    }

    [Fact]
    public void Beyond_a_level_that_was_reached_nothing_worse_is_let_in()
    {
        var objective = Of("richness", Better.Lower);
        var own = objective.Balance.Read(Five, Five, Draws.Typical)!.Value.Value;
        var beyond = objective.Beyond(model, new Level(own));
        Assert.Equal(model.Model.Rows.Count + 1, beyond.Rows.Count);
        Assert.Null(beyond.Broken(AsItIs(), 1e-9));
        Assert.StartsWith("no_worse", objective.Beyond(model, new Level(0.9 * own)).Broken(AsItIs(), 1e-9), StringComparison.Ordinal);
        // Water brings no fat and weighs: it stands in the row of the ratio. Of a sum of protein it is no part.
        Assert.Contains(beyond.Rows[^1].Terms, term => term.Column == ColumnOf("water"));
        Assert.DoesNotContain(Of("protein", Better.Higher).Beyond(model, new Level(1)).Rows[^1].Terms, term => term.Column == ColumnOf("water"));
    }

    [Fact]
    public void A_loaf_without_a_trace_of_it_still_has_a_size_to_count_by()
    {
        // Nothing sweet is in the bowl: so much a gram is all there is to count.
        var columns = Of("sweetness", Better.Higher).In(model, new Level(0)).Columns;
        Assert.All(columns, column => Assert.True(double.IsFinite(column.Cost), column.Name));
    }

    private static ReadingObjective Of(string id, Better better) => new(TestKitchen.Bakehouse.Balances.Find(id)!, better, Five);

    private int ColumnOf(string id) => model.Lines.Single(line => line.Ingredient.Id == id).Column;

    private double[] AsItIs()
    {
        var values = new double[model.Model.Columns.Count];
        foreach (var line in model.Lines)
        {
            values[line.Column] = Five.MassOf(line.Ingredient).Value;
        }

        foreach (var (column, place) in model.Model.Columns.Select((column, place) => (column, place)).Where(one => one.column.Name.StartsWith("used_", StringComparison.Ordinal)))
        {
            values[place] = column.High;
        }

        return values;
    }
}
