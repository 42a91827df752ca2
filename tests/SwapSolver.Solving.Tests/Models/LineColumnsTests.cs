using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Models;

/// <summary>What a line of the bowl is in a model: from where to where, in which steps, and what a change of it counts.</summary>
public sealed class LineColumnsTests
{
    private const double Near = 1e-9;

    /// <summary>Almond flour, water, soda, cream of tartar, butter, salt and two eggs: 438 g.</summary>
    private static readonly Formula Six = Bowl.Of(
        ("almond-flour-blanched", 200), ("water", 99.5), ("baking-soda", 4), ("cream-of-tartar", 9), ("butter", 25.5), ("salt", 3)).WithEggs(2);

    [Fact]
    public void The_order_of_the_lines_is_no_part_of_the_model()
    {
        var turned = Six with { Lines = [.. Six.Lines.Reverse()] };
        Assert.Equal(Names(Six), Names(turned));

        static IEnumerable<string> Names(Formula formula) => new BuiltModel(Of(formula)).Whole.Model.Columns.Select(column => column.Name);
    }

    [Fact]
    public void Salt_that_nobody_asked_about_stands_still()
    {
        var built = new BuiltModel(Of(Six));
        var salt = built.Line("salt");
        Assert.Equal((3, 3, 3), (salt.Low, salt.Start, salt.High));
        Assert.Equal((3, 3), (built.Column("x_salt").Low, built.Column("x_salt").High));
        Assert.Null(salt.Choice);
        Assert.False(salt.IsNew);
        Assert.False(built.HasColumn("changed_salt"));
    }

    [Fact]
    public void A_line_whose_grams_are_given_stands_still_whether_it_was_there_or_not()
    {
        var oil = TestKitchen.Ingredient("olive-oil");
        var problem = Of(Six, "olive-oil", "sesame-flour") with
        {
            Fixed = ImmutableDictionary<Ingredient, Grams>.Empty.Add(TestKitchen.Ingredient("water"), new Grams(120)).Add(oil, new Grams(15)),
        };
        var built = new BuiltModel(problem);
        Assert.Equal((120, 120, false), (built.Line("water").Low, built.Line("water").High, built.Line("water").IsNew));
        Assert.Equal((15, 15, true), (built.Line("olive-oil").Low, built.Line("olive-oil").High, built.Line("olive-oil").IsNew));
        Assert.False(built.HasColumn("changed_water"));
        // One of the two that may be new is so already; water was there.
        Assert.Equal(1, built.Row("new_ingredients").High);
        Assert.Equal(1, built.Coefficient("new_ingredients", "used_sesame_flour"));
        Assert.Equal(2, new BuiltModel(Of(Six, "olive-oil", "sesame-flour")).Row("new_ingredients").High);
        Assert.Equal(0, new BuiltModel(problem with { Habits = Habits.Usual with { NewIngredients = 0 } }).Row("new_ingredients").High);
    }

    [Fact]
    public void Water_may_go_but_not_dwindle_to_less_than_is_worth_weighing()
    {
        var built = new BuiltModel(Of(Six));
        // 10 g of water are worth weighing, 0.5 g of soda.
        Assert.Equal((1, -10), (built.Coefficient("least_water", "x_water"), built.Coefficient("least_water", "used_water")));
        Assert.Equal((0, double.PositiveInfinity), (built.Row("least_water").Low, built.Row("least_water").High));
        Assert.Equal(-0.5, built.Coefficient("least_baking_soda", "used_baking_soda"));
        // With 'used' at nothing there is none of it: 1.35 of 99.5 g at the most.
        Assert.Equal(1, built.Coefficient("most_water", "x_water"));
        Assert.Equal(-1.35 * 99.5, built.Coefficient("most_water", "used_water"), Near);
        Assert.Equal((double.NegativeInfinity, 0), (built.Row("most_water").Low, built.Row("most_water").High));
        // Butter keeps half of itself in any case, so there is nothing to choose.
        Assert.False(built.HasColumn("used_butter"));
        // Where less than that was there, that much will do, and a line of nothing has nothing to keep.
        var little = Bowl.Of(("almond-flour-blanched", 200), ("water", 6), ("almond-drink-unsweetened", 90), ("coconut-milk-canned", 0)).WithEggs(2);
        var other = new BuiltModel(Of(little));
        Assert.Equal(-6, other.Coefficient("least_water", "used_water"));
        Assert.False(other.HasColumn("used_coconut_milk_canned"));
    }

    [Fact]
    public void Grams_are_held_where_they_are_and_counted_steps_within()
    {
        // 1.35 of 99.5 g is 134.325 g, of 25.5 g 34.425 g; half of that butter is 12.75 g.
        var weighed = new BuiltModel(Of(Six));
        Assert.Equal(134.325, weighed.Line("water").High, Near);
        Assert.Equal(12.75, weighed.Line("butter").Low, Near);
        var stepped = new BuiltModel(Of(Six), wholeSteps: true);
        Assert.Equal((13, 34), (stepped.Line("butter").Low, stepped.Line("butter").High));
        Assert.Equal((0, 134), (stepped.Line("water").Low, stepped.Line("water").High));
        // An end that is a step is one, whatever its last digits: 1.35 of 100 g.
        var round = new BuiltModel(Of(Bowl.Of(("almond-flour-blanched", 200), ("water", 100), ("butter", 20)).WithEggs(2)), wholeSteps: true);
        Assert.Equal((0, 135), (round.Line("water").Low, round.Line("water").High));
        Assert.Equal((10, 27), (round.Line("butter").Low, round.Line("butter").High));
    }

    [Fact]
    public void Eggs_are_counted_in_their_own_size_and_new_ones_in_the_kitchen_s()
    {
        var white = TestKitchen.Ingredient("egg-white");
        var eggs = Bowl.Of(("almond-flour-blanched", 200), ("water", 100));
        var medium = Line.UnitOf(TestKitchen.Ingredient("egg-whole"), EggSize.MediumEu)!.Value;
        eggs = eggs with { Lines = eggs.Lines.Add(new Line(TestKitchen.Ingredient("egg-whole"), medium * 2, EggSize.MediumEu)) };
        var built = new BuiltModel(Of(eggs, white.Id) with { Habits = Habits.Usual with { EggSize = EggSize.LargeUs } });
        Assert.Equal((medium.Value, EggSize.MediumEu, 2), (built.Line("egg-whole").GramsPerUnit, built.Line("egg-whole").Size, built.Line("egg-whole").Start));
        Assert.Equal((Line.UnitOf(white, EggSize.LargeUs)!.Value.Value, EggSize.LargeUs), (built.Line(white.Id).GramsPerUnit, built.Line(white.Id).Size));
        var weighed = new BuiltModel(Of(eggs) with { Habits = Habits.Usual with { WeighedEgg = true } });
        Assert.Equal((1, null), (weighed.Line("egg-whole").GramsPerUnit, weighed.Line("egg-whole").Size));
    }

    [Theory]
    // A jar to buy; water is nothing to buy; and an allergen that the loaf had not.
    [InlineData("almond-flour-blanched", "sunflower-seed-flour", 1.05)]
    [InlineData("almond-flour-blanched", "water", 0.7)]
    [InlineData("almond-flour-blanched", "almond-drink-unsweetened", 1.05)]
    [InlineData("almond-flour-blanched", "walnut-meal", 1.05)]
    [InlineData("almond-flour-blanched", "sesame-flour", 1.05 + 2.5)]
    // Lupin and rye are on the European list alone, which counts as much; rye brings oat's readers nothing new.
    [InlineData("almond-flour-blanched", "lupin-flour", 1.05 + 2.5)]
    [InlineData("rye-flour-medium", "oat-fibre", 1.05)]
    [InlineData("rye-flour-medium", "lupin-flour", 1.05 + 2.5)]
    public void What_is_new_is_priced_by_what_it_means_to_readers_and_the_shelf(string flour, string fresh, double price)
    {
        var built = new BuiltModel(Of(Bowl.Of((flour, 200), ("olive-oil", 40)).WithEggs(2), fresh));
        Assert.Equal(price, built.Column($"used_{fresh.Replace('-', '_')}").Cost, Near);
    }

    [Fact]
    public void Something_new_is_not_there_or_at_least_worth_weighing()
    {
        var built = new BuiltModel(Of(Six, "sunflower-seed-flour"));
        var line = built.Line("sunflower-seed-flour");
        Assert.True(line.IsNew);
        Assert.Equal((0, 0), (line.Start, line.Low));
        // 10 g are worth weighing; flours may be 1.08 of 200 g, but no more than they were by usage.
        Assert.Equal(-10, built.Coefficient("least_sunflower_seed_flour", "used_sunflower_seed_flour"));
        Assert.Equal((0, double.PositiveInfinity), (built.Row("least_sunflower_seed_flour").Low, built.Row("least_sunflower_seed_flour").High));
        Assert.Equal(-200, built.Coefficient("most_sunflower_seed_flour", "used_sunflower_seed_flour"), Near);
        Assert.Equal((double.NegativeInfinity, 0), (built.Row("most_sunflower_seed_flour").Low, built.Row("most_sunflower_seed_flour").High));
        Assert.Equal(built.Column("used_sunflower_seed_flour"), built.Whole.Model.Columns[line.Choice!.Value]);
        Assert.Equal((0, 1, true), (built.Column("used_sunflower_seed_flour").Low, built.Column("used_sunflower_seed_flour").High, built.Column("used_sunflower_seed_flour").IsWhole));
    }

    [Fact]
    public void What_must_come_in_is_used()
    {
        var required = new BuiltModel(Of(Six, "sunflower-seed-flour") with { Required = [TestKitchen.Ingredient("sunflower-seed-flour")] }).Column("used_sunflower_seed_flour");
        Assert.Equal((1, 1, true), (required.Low, required.High, required.IsWhole));
    }

    [Fact]
    public void What_has_no_room_for_as_much_as_is_worth_weighing_does_not_come_in()
    {
        // All fats are 3 g, so 4.05 at the most; oil is not worth weighing below 5 g.
        var lean = Bowl.Of(("almond-flour-blanched", 200), ("water", 100), ("butter", 3)).WithEggs(2);
        Assert.DoesNotContain(new BuiltModel(Of(lean, "olive-oil")).Whole.Lines, line => line.Ingredient.Id == "olive-oil");
        Assert.Contains(new BuiltModel(Of(Six, "olive-oil")).Whole.Lines, line => line.Ingredient.Id == "olive-oil");
    }

    [Fact]
    public void Of_what_was_found_before_one_must_be_missing()
    {
        ImmutableArray<Ingredient> both = [TestKitchen.Ingredient("sesame-flour"), TestKitchen.Ingredient("sunflower-seed-flour")];
        var built = new BuiltModel(Of(Six, "sesame-flour", "sunflower-seed-flour", "olive-oil") with { Found = [both] });
        var row = built.Row("found");
        Assert.Equal(1, row.High);
        Assert.Equal(
            new[] { "used_sesame_flour", "used_sunflower_seed_flour" },
            row.Terms.Select(term => built.Whole.Model.Columns[term.Column].Name).Order(StringComparer.Ordinal));
    }

    private static FormulaProblem Of(Formula formula, params string[] candidates) =>
        Ask.Variant(formula, Ask.Without("peanuts")).Problem() with { Candidates = [.. candidates.Select(TestKitchen.Ingredient)] };
}
