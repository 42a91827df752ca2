using System.Collections.Immutable;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Questions;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Wishes;

/// <summary>A kitchen that put whole tables of foods in.</summary>
public sealed class ManyFoodsTests
{
    private static readonly ImmutableArray<(Formula Formula, string Without)> Asked =
    [
        (Loaf.Walnut, "tree-nuts"), (Loaf.Muffins, "egg"), (Loaf.CocoaCake, "milk"), (Loaf.Sunflower, "sunflower-seed-flour"), (Loaf.Yeast, "yeast-active-dry"),
    ];

    private static readonly Bakehouse Few = With(ManyFoods.LikeOurs(2_000));

    private static readonly Bakehouse Many = With(ManyFoods.LikeOurs(8_000));

    private static Bakehouse With(IEnumerable<StatedFood> foods) => TestKitchen.Bakehouse with { Pantry = ManyFoods.PantryWith(foods) };

    private static StatedFood Food(string id, string? like = null, Role? role = null, FoodOrigin origin = FoodOrigin.Table, StatedAllergens? allergens = null)
    {
        var seed = TestKitchen.Ingredient("sunflower-seed-flour");
        return new StatedFood
        {
            Id = id,
            Name = id,
            Origin = origin,
            // A number of the nuts and seeds: it is taken for a flour.
            UsdaFoodNumber = "12999",
            Like = like,
            Role = role,
            Allergens = allergens,
            Suits = new Suits(Vegan: true, Vegetarian: true, GlutenFree: true),
            Figures = like is null ? seed.Figures : TestKitchen.Ingredient(like).Figures,
        };
    }

    private static int ColumnsOf(Bakehouse bakehouse, Formula formula, string without) =>
        FormulaModel.Build(Ask.Variant(formula, Ask.Without(without)).Problem(bakehouse), wholeSteps: false).Model.Columns.Count;

    private static ImmutableArray<Ingredient> For(Bakehouse bakehouse, params ReadOnlySpan<Ingredient> named) =>
        new Candidates(bakehouse) { Named = [.. named] }.For(Loaf.Walnut, HoldList.Around(bakehouse.Balances, Loaf.Walnut, [Ask.Without("walnut-meal")]));

    [Fact]
    public void The_model_of_a_question_does_not_grow_with_the_pantry()
    {
        foreach (var (formula, without) in Asked)
        {
            var columns = ColumnsOf(Many, formula, without);
            Assert.Equal(ColumnsOf(Few, formula, without), columns);
            Assert.True(columns > ColumnsOf(TestKitchen.Bakehouse, formula, without), $"without {without} none of the kitchen's own foods is looked at");
        }
    }

    [Fact]
    public void What_only_a_table_says_is_nobodys_suggestion()
    {
        var table = With(ManyFoods.OfTable(8_000));
        foreach (var (formula, without) in Asked)
        {
            var wish = Ask.Without(without);
            Assert.Equal(
                Ask.Variant(formula, wish).Problem(TestKitchen.Bakehouse).Candidates.Select(one => one.Id),
                Ask.Variant(formula, wish).Problem(table).Candidates.Select(one => one.Id));
        }
    }

    [Fact]
    public void Of_a_role_the_kitchens_bags_come_first_and_then_the_nearest()
    {
        var most = TestKitchen.Bakehouse.Practice.OwnFoodsOfARole;
        var bags = Enumerable.Range(0, 2).Select(place => Food($"zz-bag-{place}", "coconut-flour", origin: FoodOrigin.Packet));
        var near = Enumerable.Range(0, most).Select(place => Food($"zz-near-{place}", "walnut-meal"));
        var far = Enumerable.Range(0, 50).Select(place => Food($"aa-far-{place:00}", "coconut-flour"));

        var own = For(With([.. bags, .. near, .. far])).Where(one => one.Origin is not null && one.Role == Role.Flour).Select(one => one.Id).ToList();

        Assert.Equal(most, own.Count);
        Assert.Equal(2, own.Count(id => id.StartsWith("zz-bag", StringComparison.Ordinal)));
        Assert.DoesNotContain(own, id => id.StartsWith("aa-far", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_foods_that_are_alike_the_first_by_name_are_looked_at_and_of_what_is_left_out_none()
    {
        var most = TestKitchen.Bakehouse.Practice.OwnFoodsOfARole;
        var alike = Enumerable.Range(0, most + 3).Select(place => Food($"alike-{place}", "sunflower-seed-flour", allergens: new StatedAllergens([], []))).Reverse();
        var kitchen = With([.. alike, Food("a-nut", "walnut-meal", allergens: new StatedAllergens(["tree-nuts"], []))]);
        var own = new Candidates(kitchen).For(Loaf.Walnut, HoldList.Around(kitchen.Balances, Loaf.Walnut, [Ask.Without("tree-nuts")])).Where(one => one.Origin is not null);
        Assert.Equal(Enumerable.Range(0, most).Select(place => $"alike-{place}"), own.Select(one => one.Id));
    }

    [Fact]
    public void What_a_wish_leaves_out_takes_no_place_of_what_could_come_in()
    {
        foreach (var (formula, without) in Asked)
        {
            var wish = Ask.Without(without);
            var model = FormulaModel.Build(Ask.Variant(formula, wish).Problem(Many), wholeSteps: false);
            Assert.Equal(
                Ask.Variant(formula, wish).Problem(Many).Candidates.Where(one => one.Origin is not null).Select(one => one.Id),
                model.Lines.Where(line => line.Ingredient.Origin is not null).Select(line => line.Ingredient.Id));
        }
    }

    [Fact]
    public void A_food_of_which_somebody_said_what_it_does_is_offered_and_others_where_they_are_named()
    {
        var nothingSaid = Food("nothing-said");
        var kitchen = With([nothingSaid, Food("role-said", role: Role.Flour), Food("like-said", like: "almond-meal")]);
        Assert.True(kitchen.Pantry.TryGet("nothing-said", out var named));

        Assert.Equal(["like-said", "role-said"], For(kitchen).Where(one => one.Origin is not null).Select(one => one.Id));
        Assert.Equal(["like-said", "nothing-said", "role-said"], For(kitchen, named).Where(one => one.Origin is not null).Select(one => one.Id));
    }

    [Fact]
    public void A_food_of_a_table_is_used_where_the_caller_names_it()
    {
        // It is sunflower seed by all its figures, and nobody said what it is like; ours is left out, so that it is wanted.
        var kitchen = With(ManyFoods.OfTable(8_000).Append(Food("seed-of-a-table", allergens: new StatedAllergens([], []))));
        Assert.True(kitchen.Pantry.TryGet("seed-of-a-table", out var seed));
        var search = new AnswerSearch(kitchen, Ask.Search.Solver);
        Outcomes Answers(Habits habits) =>
            new Variant(Loaf.Walnut, [Ask.Without("tree-nuts"), Ask.Without("sunflower-seed-flour")], habits).Answer(search, Ask.Ample, CancellationToken.None);

        Assert.All(Answers(Habits.Usual).Answers, answer => Assert.Equal(Grams.None, answer.Formula.MassOf(seed)));
        Assert.True(Answers(Habits.Usual with { Named = [seed] }).Answers[0].Formula.MassOf(seed) > Grams.None);

        var check = new SwapCheck(Loaf.Walnut, [new Swap(TestKitchen.Ingredient("walnut-meal"), seed, null)], [], Habits.Usual).Answer(search);
        Assert.True(check.Swapped.MassOf(seed) > Grams.None);
    }

    [Fact]
    public void Allergens_that_nobody_stated_count_as_new_ones_and_are_told()
    {
        var stated = Food("stated", allergens: new StatedAllergens([], []));
        var unstated = Food("unstated");
        var kitchen = With([stated, unstated]);
        Ingredient Of(string id) => kitchen.Pantry.TryGet(id, out var found) ? found : throw new ArgumentException("not there", nameof(id));
        var problem = (Ask.Variant(Loaf.Walnut, Ask.Without("walnut-meal")) with { Habits = Habits.Usual with { Named = [Of("stated"), Of("unstated")] } }).Problem(kitchen);
        var model = FormulaModel.Build(problem, wholeSteps: false).Model;
        double CostOf(string id) => model.Columns.Single(column => column.Name == $"used_{id}").Cost;

        Assert.Equal(Weights.NewAllergen, CostOf("unstated") - CostOf("stated"), 1e-12);

        var bread = Loaf.Walnut with { Lines = [.. Loaf.Walnut.Lines, new Line(Of("unstated"), new Grams(20))] };
        var cautions = new CautionList(kitchen).Of(Loaf.Walnut, bread, []);
        Assert.Contains(cautions, caution => caution.Contains("brings in unstated", StringComparison.Ordinal) && caution.Contains("not none", StringComparison.Ordinal));
        Assert.DoesNotContain(new CautionList(kitchen).Of(bread, bread, []), caution => caution.Contains("brings in", StringComparison.Ordinal));
    }
}
