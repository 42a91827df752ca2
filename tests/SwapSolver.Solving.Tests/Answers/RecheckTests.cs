using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Answers;

public sealed class RecheckTests
{
    private static readonly FormulaProblem Problem = Ask.Variant(Loaf.Walnut, Ask.Without("milk")).Problem();

    /// <summary>The walnut loaf with its 20 g of butter as olive oil: milk is out, and fat hardly moves.</summary>
    private static readonly Formula Good = With("butter", 0, ("olive-oil", 20));

    [Fact]
    public void A_good_answer_is_found_good()
    {
        Expect.None(Crumb.Faults(Loaf.Walnut, Good));
        Expect.None(Recheck.Broken(Problem, Good));
    }

    [Fact]
    public void Butter_in_a_loaf_without_milk_is_found() =>
        Assert.Contains("without:milk", Recheck.Broken(Problem, Loaf.Walnut));

    [Fact]
    public void A_wet_loaf_is_found() =>
        // 220 g of water and 60 more is far above 6 in a hundred.
        Assert.Contains("hydration", Recheck.Broken(Problem, Move(Good, "water", 280)));

    [Fact]
    public void A_soapy_loaf_is_found() =>
        Assert.Contains("leavening", Recheck.Broken(Problem, Move(Good, "cream-of-tartar", 7)));

    [Theory]
    [InlineData("water", 220.5)] // a scale of 1 g
    [InlineData("baking-soda", 5.05)] // a scale of 0.1 g
    public void What_no_scale_shows_is_found(string id, double grams) =>
        Assert.Contains($"line:{id}", Recheck.Broken(Problem, Move(Good, id, grams)));

    [Theory]
    [InlineData("water", 221)]
    [InlineData("baking-soda", 5.1)]
    public void What_the_scale_shows_is_passed(string id, double grams) =>
        Assert.DoesNotContain($"line:{id}", Recheck.Broken(Problem, Move(Good, id, grams)));

    [Fact]
    public void Half_an_egg_is_found()
    {
        var eggs = Good with
        {
            Lines = [.. Good.Lines.Select(line => line.Ingredient.Id == "egg-whole" ? line with { Grams = new Grams(175), Size = EggSize.LargeUs } : line)],
        };
        Assert.Contains("line:egg-whole", Recheck.Broken(Problem, eggs));
    }

    [Fact]
    public void A_pinch_of_a_flour_is_found() =>
        // Three grams of almond meal are not worth weighing: ten are the least.
        Assert.Contains("line:almond-meal", Recheck.Broken(Problem, With("butter", 0, ("olive-oil", 20), ("almond-meal", 3))));

    [Fact]
    public void A_baker_s_own_odd_grams_are_let_be_where_they_did_not_move()
    {
        var odd = Loaf.Walnut with { Lines = [.. Loaf.Walnut.Lines.Select(line => line.Ingredient.Id == "water" ? line with { Grams = new Grams(219.37) } : line)] };
        Expect.None(Recheck.Broken(Ask.Variant(odd).Problem(), odd));
    }

    [Fact]
    public void A_third_new_ingredient_is_found()
    {
        Assert.DoesNotContain("new-ingredients", Recheck.Broken(Problem, With("butter", 0, ("olive-oil", 10), ("coconut-oil", 10))));
        Assert.Contains("new-ingredients", Recheck.Broken(Problem, With("butter", 0, ("olive-oil", 8), ("coconut-oil", 7), ("ghee", 5))));
    }

    [Fact]
    public void Every_answer_passes() =>
        Expect.None(
            from baked in BakedQuestions.Answers
            let strict = Ask.Variant(baked.Question.Formula, [.. baked.Question.Wishes]).Problem()
            let problem = baked.Answer.Notes.IsEmpty ? strict : strict with { Holds = HoldList.WithRoomForWater(strict.Holds, strict.Reference) }
            from broken in Recheck.Broken(problem, baked.Answer.Formula)
            select $"{baked.Question.Name}: {broken}");

    private static Formula Move(Formula formula, string id, double grams) => formula with
    {
        Lines = [.. formula.Lines.Select(line => line.Ingredient.Id == id ? line with { Grams = new Grams(grams) } : line)],
    };

    private static Formula With(string id, double grams, params ReadOnlySpan<(string Id, double Grams)> more)
    {
        var lines = Move(Loaf.Walnut, id, grams).Lines.Where(line => line.Grams > Grams.None).ToList();
        foreach (var (added, mass) in more)
        {
            lines.Add(new Line(TestKitchen.Ingredient(added), new Grams(mass)));
        }

        return Loaf.Walnut with { Lines = [.. lines] };
    }
}
