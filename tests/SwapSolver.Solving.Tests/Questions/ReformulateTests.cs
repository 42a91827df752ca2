using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Questions;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Questions;

public sealed class ReformulateTests
{
    /// <summary>Words whose aims are reached for every loaf of the tests that has the readings; the others may be answered 'no'.</summary>
    private static readonly string[] WithinReach = ["softer", "firmer", "moister", "drier", "fewer-net-carbs", "less-salt", "more-fibre"];

    public static TheoryData<string, string> Asked
    {
        get
        {
            var asked = new TheoryData<string, string>();
            foreach (var (name, _) in Loaf.All)
            {
                foreach (var word in WithinReach)
                {
                    asked.Add(name, word);
                }
            }

            return asked;
        }
    }

    [Theory]
    [MemberData(nameof(Asked))]
    public void A_word_moves_every_reading_that_it_names_and_leaves_the_rest_of_the_crumb(string name, string word)
    {
        var loaf = Loaf.All.Single(one => one.Name == name).Formula;
        var goal = TestKitchen.Bakehouse.Goals.Find(word)!;
        var answers = Answer(loaf, word).Outcomes.Answers;
        Assert.NotEmpty(answers);
        foreach (var answer in answers)
        {
            foreach (var aim in goal.Aims)
            {
                var own = Read(aim.Balance, loaf, loaf);
                var now = Read(aim.Balance, answer.Formula, loaf);
                // Own arithmetic on percent of the loaf's own; 1e-6 is the recheck's own tolerance.
                Assert.True(now >= own * (aim.Share.Low?.Value ?? 0) / 100 * (1 - 1e-6), $"{aim.Balance.Id} {now} of {own}");
                Assert.True(own == 0 || now <= own * (aim.Share.High?.Value ?? 1e9) / 100 * (1 + 1e-6), $"{aim.Balance.Id} {now} of {own}");
            }

            var moved = goal.Aims.Select(aim => aim.Balance.Id == "hydration" ? "hydration" : aim.Balance.Settings.Title).ToList();
            Expect.None(Crumb.Faults(loaf, answer.Formula).Where(fault => !moved.Any(title => fault.StartsWith(title, StringComparison.Ordinal))));
        }
    }

    [Fact]
    public void Less_salt_takes_salt_out_and_nothing_in()
    {
        // By hand: the walnut loaf has 5 g of salt, 5 g of soda and 4 eggs; a quarter of all its sodium is more salt than
        // the usual room of the salt lets go, so the room gives way, downwards only.
        var answer = Answer(Loaf.Walnut, "less-salt").Outcomes.Answers[0];
        var change = Assert.Single(answer.Changes);
        Assert.Equal("salt", change.Ingredient.Id);
        Assert.InRange(change.After.Value, 2.5, 0.75 * 5);
    }

    [Fact]
    public void Room_given_to_less_salt_is_no_room_for_more()
    {
        var holds = Question(Loaf.Walnut, ["less-salt"]).Problem(TestKitchen.Bakehouse).Holds;
        var salt = holds.Single(hold => hold.Id == "salt-mass").Band;
        Assert.Null(salt.Low);
        Assert.Equal(1.35, salt.High!.Value.Value);
    }

    [Fact]
    public void A_figure_goes_before_the_default_band_of_its_reading()
    {
        // A tenth more water for what the flours bind is beyond the default 6 %.
        var hydration = Find("hydration");
        var wanted = 1.10 * Read(hydration, Loaf.Sunflower, Loaf.Sunflower);
        var outcomes = Question(Loaf.Sunflower, [], Targets.Of(hydration, new Band(new Level(wanted), null))).Answer(Ask.Search, Ask.Ample, CancellationToken.None).Outcomes;
        var now = Read(hydration, outcomes.Answers[0].Formula, Loaf.Sunflower);
        Assert.True(now >= wanted * (1 - 1e-6));
        // An open side is no leave to run away: half a band's width is 6 % of the loaf's own.
        Assert.True(now <= wanted + (0.06 * wanted), $"{now} for {wanted}");
    }

    [Fact]
    public void Half_of_one_line_is_kept_to_the_gram_and_the_crumb_stays()
    {
        // A line keeps half of itself, and seasoning does not move, unless somebody asks for it: a third of the salt is 2 g of 6.
        foreach (var (id, share) in new[] { ("psyllium-husk-powder", 0.75), ("salt", 1.0 / 3) })
        {
            var loaf = Loaf.Walnut;
            var line = Targets.OfLine(TestKitchen.Ingredient(id), TestKitchen.Bakehouse.Phrases);
            var most = share * loaf.MassOf(TestKitchen.Ingredient(id)).Value;
            Assert.True(most > 0, $"the loaf has no {id}");
            var outcomes = Question(loaf, [], Targets.Of(line, new Band(null, new Level(most)))).Answer(Ask.Search, Ask.Ample, CancellationToken.None).Outcomes;
            Assert.True(outcomes.Answers.Length > 0, $"{id}: {string.Join(", ", outcomes.Conflict.Select(conflict => $"{conflict.Wish} {conflict.RelaxedValue}"))}");
            var answers = outcomes.Answers;
            Assert.All(answers, answer => Assert.InRange(answer.Formula.MassOf(TestKitchen.Ingredient(id)).Value, 0, most + 1e-6));
            Expect.None(answers.SelectMany(answer => Crumb.Faults(loaf, answer.Formula)));
        }
    }

    [Fact]
    public void Two_wishes_for_one_line_are_kept_together()
    {
        var salt = TestKitchen.Ingredient("salt");
        Hold Of(Band band) => Targets.Of(Targets.OfLine(salt, TestKitchen.Bakehouse.Phrases), band);
        var answers = Question(Loaf.Walnut, [], Of(new Band(new Level(1), null)), Of(new Band(null, new Level(2)))).Answer(Ask.Search, Ask.Ample, CancellationToken.None).Outcomes.Answers;
        Assert.NotEmpty(answers);
        Assert.All(answers, answer => Assert.InRange(answer.Formula.MassOf(salt).Value, 1, 2));
    }

    [Fact]
    public void Fewer_eggs_come_out_whole()
    {
        var answer = Answer(Loaf.Walnut, "fewer-eggs").Outcomes.Answers[0];
        Assert.True(answer.Formula.MassOf(TestKitchen.Ingredient("egg-whole")).Value is 150 or 100);
        Assert.Contains(answer.Readings, reading => reading.Balance.Id == "eggs");
    }

    [Fact]
    public void A_loaf_that_is_there_already_is_left_as_it_is()
    {
        var outcomes = Question(Loaf.Walnut, [], Targets.Of(Find("protein"), new Band(new Level(1), null))).Answer(Ask.Search, Ask.Ample, CancellationToken.None).Outcomes;
        var answer = Assert.Single(outcomes.Answers);
        Assert.Empty(answer.Changes);
        Assert.Contains(answer.Notes, note => note.Contains("already", StringComparison.Ordinal));
    }

    [Fact]
    public void A_target_out_of_reach_is_named_with_one_that_is_not()
    {
        var energy = Find("energy");
        var outcomes = Question(Loaf.Walnut, [], Targets.Of(energy, new Band(null, new Level(50)))).Answer(Ask.Search, Ask.Ample, CancellationToken.None).Outcomes;
        Assert.Empty(outcomes.Answers);
        var relaxed = Assert.NotNull(Assert.Single(outcomes.Conflict, conflict => conflict.Wish == "energy").RelaxedValue).Value;
        var enough = Question(Loaf.Walnut, [], Targets.Of(energy, new Band(null, new Level(relaxed * (1 + 1e-6))))).Answer(Ask.Search, Ask.Ample, CancellationToken.None).Outcomes;
        Assert.NotEmpty(enough.Answers);
    }

    [Fact]
    public void What_has_no_price_is_not_brought_in_to_save_money()
    {
        // Invented prices: the lines of the loaf and sunflower seed flour have one, walnuts are dear.
        var price = Find("price");
        var priced = Loaf.Walnut with { Lines = [.. Loaf.Walnut.Lines.Select(line => line with { Ingredient = Priced(line.Ingredient, line.Ingredient.Id == "walnut-meal" ? 20 : 3) })] };
        var pantry = TestKitchen.Bakehouse.Pantry;
        var kitchen = TestKitchen.Bakehouse with
        {
            Pantry = new Pantry(
                pantry.Ingredients.Select(one => priced.Lines.FirstOrDefault(line => line.Ingredient.Equals(one))?.Ingredient ?? (one.Id == "sunflower-seed-flour" ? Priced(one, 5) : one)),
                pantry.Allergens,
                pantry.Groups),
        };
        var own = Read(price, priced, priced);
        var question = new Reformulate(priced, [kitchen.Goals.Find("cheaper")!], [], [], Habits.Usual);
        var answers = question.Answer(Ask.Search with { Bakehouse = kitchen, Bags = new Bags() }, Ask.Ample, CancellationToken.None).Outcomes.Answers;
        Assert.NotEmpty(answers);
        Assert.All(answers, answer =>
        {
            Assert.All(Recheck.NewIngredients(priced, answer.Formula), one => Assert.Equal("sunflower-seed-flour", one.Id));
            Assert.True(Read(price, answer.Formula, priced) <= 0.9 * own * (1 + 1e-6));
        });
    }

    private static Ingredient Priced(Ingredient ingredient, double perKilogram) => ingredient.With(
        [KeyValuePair.Create(Fact.Price, new Figure(new Kitchen.Ingredients.Range(perKilogram, perKilogram, perKilogram), "invented", Mark.Practice, null))],
        ingredient.HouseholdMeasures);

    private static Balance Find(string id) => TestKitchen.Bakehouse.Balances.Find(id)!;

    private static double Read(Balance balance, Formula formula, Formula reference) => balance.Read(formula, reference, Draws.Typical)!.Value.Value;

    private static Reformulate Question(Formula formula, string[] words, params Hold[] targets) =>
        new(formula, [.. words.Select(word => TestKitchen.Bakehouse.Goals.Find(word)!)], [.. targets], [], Habits.Usual);

    private static Reformulated Answer(Formula formula, params string[] words) => Question(formula, words).Answer(Ask.Search, Ask.Ample, CancellationToken.None);
}
