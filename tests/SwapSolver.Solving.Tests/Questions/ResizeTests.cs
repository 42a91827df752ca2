using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Solving.Tests.Questions;

public sealed class ResizeTests
{
    private static readonly Lazy<(string Name, Formula Formula, double Factor, Outcomes Outcomes)[]> Baked = new(
    [
        .. from loaf in Loaf.All
           from factor in new[] { 0.5, 1.3, 2, 3 }
           select ($"{loaf.Name} {factor} times", loaf.Formula, factor, Ask.Sized(loaf.Formula, factor, (int)Math.Round(12 * factor))),
    ]);

    private static IEnumerable<(string Name, Formula Before, double Factor, Formula After)> Answers =>
        from baked in Baked.Value
        from answer in baked.Outcomes.Answers
        select (baked.Name, baked.Formula, baked.Factor, answer.Formula);

    [Fact]
    public void Every_size_has_an_answer_or_is_told_what_stands_in_the_way() =>
        Expect.None(
            from baked in Baked.Value
            where baked.Outcomes.Answers.IsEmpty && baked.Outcomes.Conflict.IsEmpty
            select baked.Name);

    [Fact]
    public void Every_loaf_can_be_made_twice_and_three_times_as_large() =>
        Expect.None(Baked.Value.Where(baked => baked.Factor is 2 or 3 && baked.Outcomes.Answers.IsEmpty).Select(baked => baked.Name));

    [Fact]
    public void Twice_and_three_times_a_loaf_of_whole_grams_is_every_line_so_many_times()
    {
        // Whole grams and whole eggs stay whole, so nothing needs to move. The cocoa cake's 2.5 g of soda and the
        // sunflower bread's 5.6 g of cream of tartar stay on a scale of 0.1 g as well.
        foreach (var (name, before, factor, after) in Answers.Where(one => one.Factor is 2 or 3))
        {
            foreach (var line in before.Lines)
            {
                Assert.True(
                    Math.Abs(after.MassOf(line.Ingredient).Value - (line.Grams.Value * factor)) < 1e-9,
                    $"{name}: {line} became {after.MassOf(line.Ingredient)}");
            }
        }
    }

    [Fact]
    public void The_new_batter_is_as_large_as_asked_to_two_in_a_hundred() =>
        Expect.None(
            from one in Answers
            let share = new Tally(one.After).Batter / (new Tally(one.Before).Batter * one.Factor)
            where share is < 0.98 - 1e-6 or > 1.02 + 1e-6
            select $"{one.Name}: {share}");

    [Fact]
    public void Eggs_stay_whole_in_every_size() =>
        // 50 g is a large US egg without its shell: USDA row 01123.
        Expect.None(
            from one in Answers
            let eggs = one.After.MassOf(TestKitchen.Ingredient("egg-whole")).Value
            where eggs % 50 != 0
            select $"{one.Name}: {eggs} g");

    [Fact]
    public void Every_rule_of_the_crumb_is_kept_in_every_size() =>
        Expect.None(
            from one in Answers
            from fault in Crumb.Faults(one.Before, one.After)
            select $"{one.Name}: {fault}");

    [Fact]
    public void The_cocoa_cake_half_as_large_has_two_of_its_four_eggs()
    {
        var half = Ask.Sized(Loaf.CocoaCake, 0.5, 6).Answers[0].Formula;
        Assert.Equal(100, half.MassOf(TestKitchen.Ingredient("egg-whole")).Value);
        Assert.Equal(6, half.Slices);
    }

    [Fact]
    public void Half_of_three_eggs_is_made_up_without_half_an_egg()
    {
        // 75 g of egg are asked for: one egg or two, and the crumb must set all the same.
        var half = Ask.Sized(Loaf.Sunflower, 0.5, 6).Answers[0].Formula;
        Assert.Contains(half.MassOf(TestKitchen.Ingredient("egg-whole")).Value, new[] { 50.0, 100 });
        Expect.None(Crumb.Faults(Loaf.Sunflower, half));
    }

    [Theory]
    [InlineData(1.3, 14)]
    [InlineData(2, 20)]
    public void A_cap_on_net_carbs_of_a_slice_is_kept(double factor, int slices)
    {
        // A tenth below what a slice of the larger loaf would have.
        foreach (var (name, formula) in Loaf.All)
        {
            var cap = 0.9 * new Tally(formula).NetCarbs * 12 * factor / slices;
            var outcomes = Ask.Sized(formula, factor, slices, Ask.NetCarbs(cap));
            Assert.True(outcomes.Answers.Length > 0, $"{name} has no answer");
            foreach (var answer in outcomes.Answers)
            {
                Assert.InRange(new Tally(answer.Formula).NetCarbs, 0, cap * (1 + 1e-6));
                Expect.None(Crumb.Faults(formula, answer.Formula));
            }
        }
    }

    [Fact]
    public void A_cap_that_no_loaf_can_keep_is_named_with_one_that_can_be_kept()
    {
        foreach (var (name, formula) in Loaf.All)
        {
            var outcomes = Ask.Sized(formula, 1.3, 14, Ask.NetCarbs(0.05));
            Assert.Empty(outcomes.Answers);
            var conflict = Assert.Single(outcomes.Conflict, one => one.Wish == "net-carbohydrate");
            var relaxed = Assert.NotNull(conflict.RelaxedValue).Value;
            Assert.True(relaxed > 0.05, $"{name}: {relaxed}");
            Assert.True(
                Ask.Sized(formula, 1.3, 14, Ask.NetCarbs(relaxed)).Answers.Length > 0,
                $"{name}: {relaxed} g was said to do, and does not");
        }
    }

    [Fact]
    public void A_larger_loaf_brings_in_nothing_new_where_it_need_not() =>
        Expect.None(
            from one in Answers
            where one.Factor > 1
            from line in one.After.Lines
            where one.Before.MassOf(line.Ingredient) == Grams.None
            select $"{one.Name}: {line}");

    [Fact]
    public void Flours_of_a_larger_loaf_stay_within_eight_in_a_hundred() =>
        Expect.None(
            from one in Answers
            let share = new Tally(one.After).Role(Role.Flour) / (new Tally(one.Before).Role(Role.Flour) * one.Factor)
            where share is < 0.92 - 1e-6 or > 1.08 + 1e-6
            select $"{one.Name}: {share}");
}
