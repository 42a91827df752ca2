using System.Text.Json;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Answers;
using Xunit.Abstractions;

namespace SwapSolver.Solving.Tests.Questions;

public sealed class VariantTests(ITestOutputHelper output)
{
    [Fact]
    public void A_baker_gets_answers_to_most_questions_and_a_conflict_to_the_others()
    {
        var answered = BakedQuestions.All.Count(question => question.Outcomes.Answers.Length > 0);
        output.WriteLine($"{BakedQuestions.All.Length} questions, {answered} answered with {BakedQuestions.Answers.Count()} formulas");
        Assert.True(answered > BakedQuestions.All.Length / 2, "fewer than half of the questions have an answer");
        Expect.None(BakedQuestions.All.Where(question => question.Outcomes.RanOutOfTime).Select(question => question.Name));
        Expect.None(BakedQuestions.All
            .Where(question => question.Outcomes.Answers.IsEmpty == question.Outcomes.Conflict.IsEmpty)
            .Select(question => question.Name));
    }

    [Fact]
    public void An_allergen_that_was_left_out_is_in_no_formula_that_is_shown()
    {
        var found =
            from allergen in TestKitchen.Bakehouse.Pantry.Allergens
            from question in BakedQuestions.All
            where question.Wishes.Any(wish => wish.Id == $"without:{allergen.Id}")
            from formula in question.Shown
            from line in formula.Lines
            where AllergensByTheFile(line.Ingredient.Id).Contains(allergen.Id)
            select $"{question.Name}: {line.Ingredient.Id}";
        Assert.Empty(found);
    }

    [Fact]
    public void An_ingredient_that_was_left_out_is_in_no_formula_that_is_shown() =>
        Expect.None(
            from question in BakedQuestions.All
            from formula in question.Shown
            from line in formula.Lines
            where question.Wishes.Any(wish => wish.Id == $"without:{line.Ingredient.Id}")
            select $"{question.Name}: {line.Ingredient.Id}");

    [Fact]
    public void Every_answer_keeps_every_rule_of_the_crumb_on_its_printed_grams() =>
        Expect.None(
            from baked in BakedQuestions.Answers
            from fault in Crumb.Faults(baked.Question.Formula, baked.Answer.Formula)
            select $"{baked.Question.Name}: {fault}");

    [Fact]
    public void Every_answer_keeps_the_limit_on_net_carbs_that_was_asked_for() =>
        Expect.None(
            from baked in BakedQuestions.Answers
            from wish in baked.Question.Wishes
            where wish.LeftOut is null && new Tally(baked.Answer.Formula).NetCarbs > wish.Band.High!.Value.Value * (1 + 1e-6)
            select $"{baked.Question.Name}: {new Tally(baked.Answer.Formula).NetCarbs}");

    [Fact]
    public void The_tin_holds_every_answer() =>
        // 0.95 to 1.05 of the reference's batter; common practice, no source.
        Expect.None(
            from baked in BakedQuestions.Answers
            let share = new Tally(baked.Answer.Formula).Batter / new Tally(baked.Question.Formula).Batter
            where share is < 0.95 - 1e-6 or > 1.05 + 1e-6
            select $"{baked.Question.Name}: {share}");

    [Theory]
    [InlineData(Role.Flour, 0.92, 1.08)]
    [InlineData(Role.Fat, 0.75, 1.35)]
    [InlineData(Role.Liquid, 0.75, 1.35)]
    [InlineData(Role.Sweetener, 0.75, 1.35)]
    public void Every_answer_keeps_the_mass_of_a_role_or_says_that_it_does_not(Role role, double low, double high) =>
        Expect.None(
            from baked in BakedQuestions.Answers
            let before = new Tally(baked.Question.Formula).Role(role)
            let share = new Tally(baked.Answer.Formula).Role(role) / before
            where before > 0 && (share < low - 1e-6 || (share > high + 1e-6 && (role != Role.Liquid || baked.Answer.Notes.IsEmpty)))
            select $"{baked.Question.Name}: {share}");

    [Fact]
    public void Eggs_whites_and_yolks_come_whole() =>
        // 50, 33 and 17 g are a large US egg's parts: USDA rows 01123, 01124 and 01125.
        Expect.None(
            from baked in BakedQuestions.Answers
            from line in baked.Answer.Formula.Lines
            let one = line.Ingredient.Id switch { "egg-whole" => 50m, "egg-white" => 33m, "egg-yolk" => 17m, _ => 0m }
            where one > 0 && (decimal)line.Grams.Value % one != 0
            select $"{baked.Question.Name}: {line}");

    [Fact]
    public void Every_line_that_moved_can_be_read_off_the_scale() =>
        Expect.None(
            from baked in BakedQuestions.Answers
            from line in baked.Answer.Formula.Lines
            where line.Grams != baked.Question.Formula.MassOf(line.Ingredient)
            let step = line.Ingredient.Role is Role.Acid or Role.Base or Role.LeaveningBlend or Role.Salt or Role.Yeast or Role.Gel or Role.Flavour
                ? 0.1m : 1m
            where (decimal)line.Grams.Value % step != 0
            select $"{baked.Question.Name}: {line}");

    [Fact]
    public void At_most_two_ingredients_are_new() =>
        Expect.None(
            from baked in BakedQuestions.Answers
            where NewIn(baked.Question.Formula, baked.Answer).Count > 2
            select baked.Question.Name);

    [Fact]
    public void No_line_is_left_that_is_not_worth_weighing() =>
        Expect.None(
            from baked in BakedQuestions.Answers
            from line in baked.Answer.Formula.Lines
            let before = baked.Question.Formula.MassOf(line.Ingredient)
            where line.Grams < line.Ingredient.Usage.SensibleMinimum && (before == Grams.None || line.Grams < before)
            select $"{baked.Question.Name}: {line}");

    [Fact]
    public void No_line_grows_beyond_what_a_dough_bears_of_it() =>
        // Ceilings are shares of the reference's flours and batter. Where it answers with 0.92 of the flours or 0.95 of
        // the batter, the same grams are a larger share; half a step of the scale may come by rounding.
        Expect.None(
            from baked in BakedQuestions.Answers
            from line in baked.Answer.Formula.Lines
            where line.Grams > baked.Question.Formula.MassOf(line.Ingredient)
            let usage = line.Ingredient.Usage
            let tally = new Tally(baked.Answer.Formula)
            let most = Math.Min(
                (usage.MaximumOfFlour?.Share * Math.Max(tally.Role(Role.Flour), 0.35 * tally.Batter) / 0.92) ?? double.PositiveInfinity,
                (usage.MaximumOfBatter?.Share * tally.Batter / 0.95) ?? double.PositiveInfinity)
            where line.Grams.Value > most + (usage.ScaleStep.Value / 2)
            select $"{baked.Question.Name}: {line}, at most {most}");

    [Fact]
    public void Alternatives_differ_in_what_is_new() =>
        Expect.None(
            from question in BakedQuestions.All
            let sets = question.Outcomes.Answers.Select(answer => string.Join(' ', NewIn(question.Formula, answer).Order(StringComparer.Ordinal)))
            where sets.Distinct().Count() != question.Outcomes.Answers.Length
            select question.Name);

    [Fact]
    public void A_loaf_that_already_meets_every_wish_is_left_alone()
    {
        foreach (var question in BakedQuestions.All.Where(question => MeetsAlready(question)))
        {
            var answer = Assert.Single(question.Outcomes.Answers);
            Assert.Equal(Ask.Weights(question.Formula), Ask.Weights(answer.Formula));
            Assert.Empty(answer.Changes);
            Assert.Equal(1, answer.ChanceOfBalance);
        }

        Assert.Contains(BakedQuestions.All, MeetsAlready);
    }

    [Fact]
    public void Asked_twice_a_baker_hears_the_same()
    {
        foreach (var loaf in Loaf.All)
        {
            var question = Ask.Variant(loaf.Formula, Ask.Without("egg"));
            Assert.Equal(
                question.Answer().Answers.Select(answer => Ask.Weights(answer.Formula)),
                question.Answer().Answers.Select(answer => Ask.Weights(answer.Formula)));
        }
    }

    [Theory]
    [InlineData("tree-nuts")]
    [InlineData("milk")]
    [InlineData("psyllium")]
    public void The_order_in_which_the_lines_are_written_changes_nothing(string word)
    {
        foreach (var loaf in Loaf.All)
        {
            var reversed = loaf.Formula with { Lines = [.. loaf.Formula.Lines.Reverse()] };
            Assert.Equal(
                Ask.Variant(loaf.Formula, Ask.Without(word)).Answer().Answers.Select(answer => Ask.Weights(answer.Formula)),
                Ask.Variant(reversed, Ask.Without(word)).Answer().Answers.Select(answer => Ask.Weights(answer.Formula)));
        }
    }

    [Fact]
    public void A_line_written_twice_counts_as_one()
    {
        var halves = Loaf.Walnut with
        {
            Lines = [.. Loaf.Walnut.Lines.SelectMany(line => new[] { line with { Grams = line.Grams * 0.5 }, line with { Grams = line.Grams * 0.5 } })],
        };
        Assert.Equal(
            Ask.Variant(Loaf.Walnut, Ask.Without("milk")).Answer().Answers.Select(answer => Ask.Weights(answer.Formula)),
            Ask.Variant(halves, Ask.Without("milk")).Answer().Answers.Select(answer => Ask.Weights(answer.Formula)));
    }

    [Fact]
    public void Whoever_is_brought_a_new_allergen_is_told_so()
    {
        var bringing = BakedQuestions.Answers
            .Select(baked => (baked.Question, baked.Answer, Brought: Allergens(baked.Answer.Formula).Except(Allergens(baked.Question.Formula)).ToList()))
            .ToList();
        foreach (var (question, answer, brought) in bringing)
        {
            var caution = answer.Cautions.Where(text => text.StartsWith("This brings in ", StringComparison.Ordinal)).ToList();
            Assert.Equal(brought.Count > 0, caution.Count == 1);
            foreach (var id in brought)
            {
                var name = TestKitchen.Bakehouse.Pantry.Allergens.Single(allergen => allergen.Id == id).Name;
                Assert.True(caution[0].Contains(name, StringComparison.Ordinal), $"{question.Name} is silent on {name}");
            }
        }

        Assert.Contains(bringing, one => one.Brought.Count > 0);
    }

    private static HashSet<string> Allergens(Formula formula) =>
        [.. formula.Lines.SelectMany(line => AllergensByTheFile(line.Ingredient.Id))];

    private static List<string> NewIn(Formula before, Answer answer) =>
        [.. answer.Formula.Lines.Select(line => line.Ingredient).Where(one => before.MassOf(one) == Grams.None).Select(one => one.Id)];

    private static bool MeetsAlready(BakedQuestion question) => question.Wishes.All(wish => wish.LeftOut is { } rule
        ? question.Formula.Lines.All(line => !rule.Carries(line.Ingredient))
        : new Tally(question.Formula).NetCarbs <= wish.Band.High!.Value.Value);

    /// <summary>The allergens as they stand in the ingredient's file, read by the test itself.</summary>
    private static HashSet<string> AllergensByTheFile(string id)
    {
        var path = Path.Combine(AppContext.BaseDirectory, "data", "ingredients", $"{id}.json");
        using var file = JsonDocument.Parse(File.ReadAllText(path));
        var allergens = file.RootElement.GetProperty("allergens");
        return
        [
            .. allergens.GetProperty("us").EnumerateArray().Concat(allergens.GetProperty("eu").EnumerateArray())
                .Select(allergen => allergen.GetString()!),
        ];
    }
}
