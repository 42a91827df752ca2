using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.OrTools;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Questions;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Answers;

public sealed class SureSolveTests
{
    /// <summary>Two points of a hundred, as the answers promise.</summary>
    private const double Promise = 0.02;

    public static TheoryData<string, string> Questions => new()
    {
        { "Walnut", "tree-nuts" }, { "Walnut", "egg" }, { "Sunflower", "egg" }, { "Muffins", "egg" }, { "CocoaCake", "tree-nuts" }, { "Yeast", "tree-nuts" },
    };

    [Theory]
    [MemberData(nameof(Questions))]
    public void The_chance_that_is_told_holds_in_kitchens_that_were_not_sampled(string loaf, string without)
    {
        var variant = Ask(loaf, without, null);
        foreach (var answer in variant.Answer(Search, Soon, default).Answers)
        {
            Assert.InRange(answer.ChanceOfBalance - Fresh(variant, answer.Formula, Holds(answer)), -Promise, Promise);
        }
    }

    [Theory]
    [InlineData("Sunflower", "egg", 62)]
    [InlineData("Walnut", "tree-nuts", 50)]
    [InlineData("Muffins", "egg", 58)]
    public void A_wish_for_sureness_is_kept_or_said_to_be_out_of_reach_with_the_surest_formula(string loaf, string without, double sureness)
    {
        var variant = Ask(loaf, without, new Percent(sureness));
        var outcomes = variant.Answer(Search, Soon, default);

        Assert.All(outcomes.Answers, answer => Assert.True(answer.ChanceOfBalance >= sureness / 100, $"{answer.ChanceOfBalance}"));
        Assert.All(outcomes.Answers, answer => Assert.True(Fresh(variant, answer.Formula, Holds(answer)) >= (sureness / 100) - Promise));
        if (outcomes.Answers.IsEmpty)
        {
            var wish = Assert.Single(outcomes.Conflict);
            Assert.Equal("sureness", wish.Wish);
            Assert.True(wish.RelaxedValue!.Value.Value < sureness);
            Assert.Equal(wish.RelaxedValue.Value.Value, Math.Floor(outcomes.Nearest!.ChanceOfBalance * 100), 1d);
        }
    }

    [Fact]
    public void A_surer_formula_is_found_than_the_plain_one_and_its_price_is_told()
    {
        var plain = Ask("Sunflower", "egg", null).Answer(Search, Soon, default).Answers[0];
        var sureness = new Percent(Math.Floor(plain.ChanceOfBalance * 100) + 1);
        var sure = Ask("Sunflower", "egg", sureness).Answer(Search, Soon, default).Answers[0];

        Assert.True(sure.ChanceOfBalance >= sureness.Share && sure.ChanceOfBalance > plain.ChanceOfBalance, $"{sure.ChanceOfBalance} against {plain.ChanceOfBalance}");
        Assert.Contains(sure.Notes, note => note.Contains($"Asked to balance in {sureness.Value} of 100", StringComparison.Ordinal));
    }

    [Fact]
    public void The_model_of_a_sure_answer_has_the_kitchens_that_it_was_solved_for()
    {
        var plain = Ask("Sunflower", "egg", null);
        var told = plain.Answer(Search, Soon, default).Answers[0];
        Assert.Empty(told.Model);
        var sure = plain with { Habits = plain.Habits with { Sureness = new Percent(Math.Floor(told.ChanceOfBalance * 100) + 1), ExplainModel = true } };

        Assert.Contains("kitchen_", sure.Answer(Search, Soon, default).Answers[0].Model, StringComparison.Ordinal);
        Assert.DoesNotContain("kitchen_", (plain with { Habits = plain.Habits with { ExplainModel = true } }).Answer(Search, Soon, default).Answers[0].Model, StringComparison.Ordinal);
    }

    [Fact]
    public void The_fact_that_decides_is_the_one_that_is_uncertain()
    {
        var reference = Loaf.Walnut.Merged();
        var answer = Ask("Walnut", "tree-nuts", null).Answer(Search, Soon, default).Answers[0];
        Assert.NotEmpty(answer.Decisive);
        Assert.True(answer.Decisive.Length <= 3);

        // With the most decisive fact known exactly the answer balances in more kitchens, or in fewer: the doubt is less.
        var most = answer.Decisive[0];
        double Doubt(double chance) => chance * (1 - chance);
        var doubts = new[] { 0.05, 0.25, 0.5, 0.75, 0.95 }.Select(share =>
        {
            var range = most.Ingredient.RangeOf(most.Fact)!.Value;
            var known = Known(most.Ingredient, most.Fact, range.At(share));
            Formula With(Formula formula) => formula with { Lines = [.. formula.Lines.Select(line => line.Ingredient.Equals(known) ? line with { Ingredient = known } : line)] };
            var (asked, found) = (With(reference), With(answer.Formula));
            return Doubt(new FactSamples(asked.Lines.Concat(found.Lines).Select(line => line.Ingredient)).ChanceOfBalance(Holds(answer), asked, found));
        }).Average();
        Assert.True(doubts < Doubt(answer.ChanceOfBalance), $"{doubts} against {Doubt(answer.ChanceOfBalance)}");
    }

    private static AnswerSearch Search => new(TestKitchen.Bakehouse, new OrToolsSolver());

    private static Deadline Soon => new(TimeProvider.System, TimeProvider.System.GetUtcNow() + TimeSpan.FromSeconds(120));

    private static Variant Ask(string loaf, string without, Percent? sureness) => new(
        Loaf.All.Single(pair => pair.Name == loaf).Formula,
        [new LeavingOut(TestKitchen.Bakehouse.Pantry, TestKitchen.Bakehouse.Phrases).Of(without)!],
        Habits.Usual with { Sureness = sureness });

    /// <summary>The bands that an answer was held to: those of the strict way, with the liquids' room as it was given.</summary>
    private static ImmutableArray<Hold> Holds(Answer answer) =>
        [.. answer.Readings.Where(reading => !reading.Band.IsOpen).Select(reading => new Hold(reading.Balance.Id, reading.Balance, reading.Band, false, IsAnchored(reading)))];

    private static bool IsAnchored(Reading reading) => reading.Balance.Id != "liquid-mass";

    private static double Fresh(Variant variant, Formula formula, ImmutableArray<Hold> holds)
    {
        var reference = variant.Formula.Merged();
        return new FactSamples(reference.Lines.Concat(formula.Lines).Select(line => line.Ingredient), drawn: new Bags(batch: 1)).ChanceOfBalance(holds, reference, formula);
    }

    private static Ingredient Known(Ingredient ingredient, Fact fact, double value) => ingredient.With(
        [KeyValuePair.Create(fact, ingredient.Figures[fact] with { Range = new(value, value, value) })], ingredient.HouseholdMeasures);
}
