using System.Globalization;
using System.Text.RegularExpressions;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Solving.Tests.Answers;

public sealed class ExplanationTests
{
    [Fact]
    public void Every_line_that_differs_is_told_and_no_other() =>
        Expect.None(
            from baked in BakedQuestions.Answers
            let before = baked.Question.Formula
            let after = baked.Answer.Formula
            let differ = before.Lines.Concat(after.Lines).Select(line => line.Ingredient).Distinct()
                .Where(one => before.MassOf(one) != after.MassOf(one)).Select(one => one.Id).Order(StringComparer.Ordinal)
            where !differ.SequenceEqual(baked.Answer.Changes.Select(change => change.Ingredient.Id).Order(StringComparer.Ordinal))
            select baked.Question.Name);

    [Fact]
    public void The_grams_before_and_after_are_those_of_the_formulas() =>
        Expect.None(
            from baked in BakedQuestions.Answers
            from change in baked.Answer.Changes
            where change.Before != baked.Question.Formula.MassOf(change.Ingredient) || change.After != baked.Answer.Formula.MassOf(change.Ingredient)
            select $"{baked.Question.Name}: {change}");

    [Fact]
    public void What_goes_out_is_told_first_then_what_comes_in_then_what_moves() =>
        Expect.None(
            from baked in BakedQuestions.Answers
            let order = baked.Answer.Changes.Select(change => change.After == Grams.None ? 0 : change.Before == Grams.None ? 1 : 2)
            where !order.SequenceEqual(order.Order())
            select baked.Question.Name);

    [Fact]
    public void What_was_to_be_left_out_goes_for_that_reason_alone()
    {
        var change = Ask.Variant(Loaf.Walnut, Ask.Without("tree-nuts")).Answer().Answers[0].Changes[0];
        Assert.Equal("walnut-meal", change.Ingredient.Id);
        Assert.Equal("left out: the wish is to do without tree nuts", change.Reason);
    }

    [Fact]
    public void Whole_eggs_are_told_by_the_piece()
    {
        var change = Ask.Variant(Loaf.Walnut, Ask.Without("egg")).Answer().Answers
            .SelectMany(answer => answer.Changes).First(change => change.Ingredient.Id == "egg-whole");
        Assert.Equal((4, 0), (change.BeforeCount, change.AfterCount));
    }

    [Fact]
    public void A_reading_named_as_a_reason_is_what_the_bowl_would_read_without_the_change()
    {
        var checkedReasons = 0;
        foreach (var (question, answer) in BakedQuestions.Answers)
        {
            foreach (var change in answer.Changes)
            {
                foreach (Match said in Regex.Matches(change.Reason, @"\((hydration|setting protein|gel|richness|gas|acid by soda) ([0-9.E-]+), (at least|at most) ([0-9.E-]+)\)"))
                {
                    var undone = new Tally(Undone(question.Formula, answer.Formula, change.Ingredient.Id));
                    var worked = said.Groups[1].Value switch
                    {
                        "hydration" => undone.Hydration,
                        "setting protein" => undone.SettingProtein,
                        "gel" => undone.Gel,
                        "richness" => undone.Richness,
                        "gas" => undone.Gas,
                        _ => undone.Leavening,
                    };
                    checkedReasons++;
                    var read = double.Parse(said.Groups[2].Value, CultureInfo.InvariantCulture);
                    var limit = double.Parse(said.Groups[4].Value, CultureInfo.InvariantCulture);
                    // Three figures that count, or four decimals: half a unit of the last.
                    Assert.Equal(worked, read, Math.Max(0.00006, Math.Abs(worked) * 0.006));
                    Assert.True(said.Groups[3].Value == "at least" ? read < limit : read > limit, $"{question.Name}: {change.Reason}");
                }
            }
        }

        Assert.True(checkedReasons > 40, $"only {checkedReasons} reasons name a reading");
    }

    [Fact]
    public void Every_change_has_a_reason() =>
        Assert.All(BakedQuestions.Answers.SelectMany(baked => baked.Answer.Changes), change => Assert.NotEmpty(change.Reason));

    [Fact]
    public void A_loaf_made_larger_says_that_its_lines_grow_with_it()
    {
        var answer = Ask.Sized(Loaf.Walnut, 2, 24).Answers[0];
        Assert.Equal(Loaf.Walnut.Lines.Length, answer.Changes.Length);
        Assert.All(answer.Changes, change => Assert.Equal("grows with the loaf (2 times)", change.Reason));
    }

    private static Formula Undone(Formula before, Formula after, string id)
    {
        var others = after.Lines.Where(line => line.Ingredient.Id != id);
        return after with { Lines = [.. others, .. before.Lines.Where(line => line.Ingredient.Id == id)] };
    }
}
