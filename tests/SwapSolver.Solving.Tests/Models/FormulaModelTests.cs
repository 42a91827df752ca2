using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;
using SwapSolver.Solving.Models;

namespace SwapSolver.Solving.Tests.Models;

/// <summary>A five-line formula and its model, row by row.</summary>
public sealed class FormulaModelTests
{
    /// <summary>Almond flour 200, water 100, soda 4, cream of tartar 9, two eggs: 413 g.</summary>
    private static readonly Formula Five = Bowl.Of(
        ("almond-flour-blanched", 200), ("water", 100), ("baking-soda", 4), ("cream-of-tartar", 9)).WithEggs(2);

    /// <summary>Built anew for each test.</summary>
    private readonly Model model = FormulaModel.Build(
        Ask.Variant(Five, Ask.Without("milk")).Problem() with { Candidates = [] }, wholeSteps: false).Model;

    [Fact]
    public void Eggs_are_counted_and_the_other_lines_weighed()
    {
        var eggs = Column("n_egg_whole");
        Assert.True(eggs.IsWhole);
        // Half of two eggs at the least, 1.35 times 100 g = 2.7 eggs, so two, at the most.
        Assert.Equal((1, 2), (eggs.Low, eggs.High));
        Assert.False(Column("x_water").IsWhole);
        // Almond flour bears up to all of the flours, 200 g; water 1.35 of itself.
        Assert.Equal((100, 200), (Column("x_almond_flour_blanched").Low, Column("x_almond_flour_blanched").High));
        Assert.Equal((0, 135), (Column("x_water").Low, Column("x_water").High));
    }

    [Fact]
    public void A_line_is_what_it_was_and_what_it_gained_less_what_it_lost()
    {
        // x - more + less = 100.
        var row = Row("move_water");
        Assert.Equal((100, 100), (row.Low, row.High));
        Assert.Equal(1, Coefficient(row, "x_water"));
        Assert.Equal(-1, Coefficient(row, "more_water"));
        Assert.Equal(1, Coefficient(row, "less_water"));
    }

    [Fact]
    public void An_egg_is_fifty_grams_in_every_row()
    {
        Assert.Equal(50, Coefficient(Row("move_egg_whole"), "n_egg_whole"));
        // Batter 413 g, scaled by itself: 50 / 413.
        Assert.Equal(50.0 / 413, Coefficient(Row("batter_mass_Low"), "n_egg_whole"), 1e-12);
    }

    [Fact]
    public void A_line_moves_only_if_it_counts_as_changed()
    {
        // Water may gain 135 - 100 = 35 g and lose all of its 100 g.
        Assert.Equal(-35, Coefficient(Row("more_water"), "changed_water"), 1e-9);
        Assert.Equal(-100, Coefficient(Row("less_water"), "changed_water"), 1e-9);
        Assert.Equal(1, Column("changed_water").Cost);
    }

    [Fact]
    public void The_flour_rows_hold_ninety_two_to_a_hundred_and_eight()
    {
        // x / 200 >= 0.92 and -x / 200 >= -1.08, each let out by a ten-millionth.
        Assert.Equal(1.0 / 200, Coefficient(Row("flour_mass_Low"), "x_almond_flour_blanched"), 1e-12);
        Assert.Equal(0.92, Row("flour_mass_Low").Low, 2e-7);
        Assert.Equal(-1.0 / 200, Coefficient(Row("flour_mass_High"), "x_almond_flour_blanched"), 1e-12);
        Assert.Equal(-1.08, Row("flour_mass_High").Low, 2e-7);
    }

    [Fact]
    public void The_hydration_floor_weighs_water_against_water_bound()
    {
        // Water brought by a gram less 0.94 times the reference's hydration times the water that it binds; the row is
        // scaled by the reference's own water, which is bound water times hydration.
        var hydration = new Tally(Five).Hydration;
        double Of(string id, Fact fact) => TestKitchen.Ingredient(id).RangeOf(fact)!.Value.Typical;
        var water = Five.Lines.Sum(line => line.Grams.Value * line.Ingredient.RangeOf(Fact.Water)!.Value.Typical / 100);
        var flour = (Of("almond-flour-blanched", Fact.Water) / 100) - (0.94 * hydration * Of("almond-flour-blanched", Fact.WaterBound));
        Assert.Equal(flour / water, Coefficient(Row("hydration_Low"), "x_almond_flour_blanched"), 1e-9);
        // Tap water is 99.9 % water (USDA row 14411, from memory; the pantry's file says the same).
        Assert.Equal(0.999 / water, Coefficient(Row("hydration_Low"), "x_water"), 1e-9);
        // An egg is 50 g at 76.15 % water (USDA row 01123) and binds none.
        Assert.Equal(50 * 0.7615 / water, Coefficient(Row("hydration_Low"), "n_egg_whole"), 1e-9);
    }

    [Fact]
    public void The_leavening_floor_weighs_acid_against_nine_tenths_of_the_soda()
    {
        // Soda: -0.9 x 1000 / 84.006 mmol/g; cream of tartar: 1000 / 188.177. Their quotient is free of any scale.
        var row = Row("leavening_Low");
        Assert.Equal(
            -0.9 * (1000 / 84.006) / (1000 / 188.177),
            Coefficient(row, "x_baking_soda") / Coefficient(row, "x_cream_of_tartar"),
            1e-3);
        Assert.Equal(0, Coefficient(row, "x_water"));
    }

    [Fact]
    public void The_unchanged_bowl_keeps_every_row_and_costs_nothing()
    {
        double[] values =
        [
            .. model.Columns.Select(column => column.Name switch
            {
                "x_almond_flour_blanched" => 200,
                "x_water" => 100,
                "x_baking_soda" => 4,
                "x_cream_of_tartar" => 9,
                "n_egg_whole" => 2,
                var name when name.StartsWith("used_", StringComparison.Ordinal) => 1,
                _ => 0,
            }),
        ];
        Assert.Null(model.Broken(values, 1e-9));
        Assert.Equal(0, model.Objective(values));
    }

    [Fact]
    public void What_is_left_out_has_no_column_at_all()
    {
        var without = FormulaModel.Build(Ask.Variant(Five, Ask.Without("egg")).Problem(), wholeSteps: false);
        Assert.DoesNotContain(without.Lines, line => line.Ingredient.Id == "egg-whole");
        Assert.DoesNotContain(without.Model.Columns, column => column.Name.EndsWith("_egg_whole", StringComparison.Ordinal));
    }

    [Fact]
    public void In_steps_of_the_scale_soda_is_counted_in_tenths_of_a_gram()
    {
        var stepped = FormulaModel.Build(Ask.Variant(Five, Ask.Without("milk")).Problem(), wholeSteps: true);
        Assert.All(stepped.Lines, line => Assert.True(stepped.Model.Columns[line.Column].IsWhole));
        Assert.Equal(0.1, stepped.Lines.Single(line => line.Ingredient.Id == "baking-soda").GramsPerUnit);
        Assert.Equal(1, stepped.Lines.Single(line => line.Ingredient.Id == "water").GramsPerUnit);
    }

    [Fact]
    public void A_point_is_told_in_steps_of_the_scale_and_what_stayed_keeps_its_own_figure()
    {
        // Water as the baker wrote it is on no step; the soda moved, and the acid went.
        var odd = Bowl.Of(("almond-flour-blanched", 200), ("water", 100.4), ("baking-soda", 4), ("cream-of-tartar", 9));
        var unit = Line.UnitOf(TestKitchen.Ingredient("egg-whole"), EggSize.MediumUs)!.Value;
        odd = odd with { Lines = odd.Lines.Add(new Line(TestKitchen.Ingredient("egg-whole"), unit * 2, EggSize.MediumUs)) };
        var problem = Ask.Variant(odd, Ask.Without("milk")).Problem() with { Start = odd, Candidates = [TestKitchen.Ingredient("olive-oil")] };
        var stayed = At(problem, ("almond-flour-blanched", 190.6), ("water", 100.4), ("baking-soda", 3.26), ("egg-whole", 3), ("olive-oil", 7.4));
        Assert.Equal("almond-flour-blanched 191, baking-soda 3.3, egg-whole 132, olive-oil 7, water 100.4", Ask.Weights(stayed));
        Assert.Equal(EggSize.MediumUs, stayed.Lines.Single(line => line.Ingredient.Id == "egg-whole").Size);
        // A tenth of a gram away it moved, and is on the scale.
        Assert.Contains("water 101", Ask.Weights(At(problem, ("water", 100.5))), StringComparison.Ordinal);
        // What was given is as it was given, on the scale or not.
        var given = problem with { Fixed = System.Collections.Immutable.ImmutableDictionary<Ingredient, Kitchen.Quantities.Grams>.Empty.Add(TestKitchen.Ingredient("water"), new(77.7)) };
        Assert.Equal("water 77.7", Ask.Weights(At(given, ("water", 77.7))));

        static Formula At(Solving.Models.FormulaProblem problem, params (string Id, double Units)[] units)
        {
            var built = FormulaModel.Build(problem, wholeSteps: false);
            var values = new double[built.Model.Columns.Count];
            foreach (var (id, amount) in units)
            {
                values[built.Lines.Single(line => line.Ingredient.Id == id).Column] = amount;
            }

            return built.At(problem, values);
        }
    }

    private Column Column(string name) => model.Columns.Single(column => column.Name == name);

    /// <summary>The row of a name, behind which its running number stands.</summary>
    private ModelRow Row(string name) =>
        model.Rows.First(row => row.Name[..row.Name.LastIndexOf('_')] == name);

    private double Coefficient(ModelRow row, string column) =>
        row.Terms.Where(term => model.Columns[term.Column].Name == column).Sum(term => term.Coefficient);
}
