using SwapSolver.Loaves;

namespace SwapSolver.Asking.Tests;

/// <summary>Readers' phrasings, each with what is meant by it.</summary>
public sealed class PhrasingTests
{
    private static readonly ReferenceTable Known = ReferenceTable.Read("Reference/phrasings.csv");

    private static readonly ReferenceTable Unseen = ReferenceTable.Read("Reference/phrasings-written-before.csv");

    public static TheoryData<string> Phrasings => [.. Known.Names];

    [Theory]
    [MemberData(nameof(Phrasings))]
    public void A_phrasing_is_understood_as_it_is_meant(string row) => Assert.Equal(Known[row]["understood"], Understood(Known[row]));

    [Fact]
    public void Of_phrasings_that_the_grammar_was_not_written_by_nine_in_ten_are_understood()
    {
        var missed = Unseen.Rows.Where(row => Understood(row) != row["understood"]).ToList();
        Assert.True(missed.Count <= Unseen.Rows.Length / 10, string.Join('\n', missed.Select(row => $"{row.Text}: {Understood(row)}")));
    }

    [Fact]
    public void What_is_understood_otherwise_than_it_is_meant_says_so()
    {
        var silent = Unseen.Rows.Concat(Known.Rows)
            .Where(row => Understood(row) != row["understood"] && TestQuestions.Read(row["formula"], row["question"]).Problem.Length == 0);
        Assert.Empty(silent.Select(row => $"{row.Text}: {Understood(row)}"));
    }

    [Theory]
    [InlineData("is this alright for a diabetic", "the people who treat them")]
    [InlineData("can I taste the batter raw before baking", "Do not taste raw batter")]
    [InlineData("no eggs, and my dog likes it too", "poison a dog")]
    [InlineData("is it legal to sell this as gluten-free", "local law and licensed practice")]
    [InlineData("is this certified gluten free", "local law and licensed practice")]
    public void A_dangerous_question_is_refused_with_its_caution(string question, string caution)
    {
        var told = TestQuestions.Read("hazelnut-tin-loaf", question);

        Assert.Equal(QuestionKind.NotUnderstood, told.Kind);
        Assert.Contains(caution, told.Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("my husband is on insulin, no nuts please", "VARIANT without=tree-nuts")]
    [InlineData("I'm diabetic and count everything, could the net carbs drop below 1.5 g per slice?", "REFORMULATE targets=net-carbohydrate=..1.5")]
    public void What_somebody_ill_asks_of_the_loaf_is_answered_with_its_caution(string question, string understood)
    {
        var told = TestQuestions.Read("hazelnut-tin-loaf", question);

        Assert.Equal(understood, TestQuestions.Words(told));
        Assert.Contains("the people who treat them", told.Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("does it contain sesame")]
    [InlineData("is the flaxseed needed?")]
    [InlineData("do I need the butter?")]
    public void A_question_after_what_is_in_it_says_that_it_was_read_as_one_without(string question) =>
        Assert.Contains(TestQuestions.Read("hazelnut-tin-loaf", question).Assumed, taken => taken.Contains("whether it can be made without", StringComparison.Ordinal));

    [Theory]
    [InlineData("would stevia work?", "erythritol")]
    [InlineData("can I use coconut oil?", "unsalted butter")]
    [InlineData("I only have dutch process cocoa", "natural cocoa")]
    public void In_whose_place_something_new_was_taken_to_come_is_said(string question, string own) =>
        Assert.Contains(TestQuestions.Read("cocoa-cake", question).Assumed, taken => taken.Contains($"in place of {own}", StringComparison.Ordinal));

    [Theory]
    [InlineData("hazelnut-tin-loaf", "no butter, coconut oil", "'butter, coconut oil' was read as a list")]
    [InlineData("seeded-free-form-loaf", "my son is allergic to egg white", "An allergy to egg white was read as one to egg.")]
    [InlineData("cocoa-cake", "no yolks please", "'yolks' is here in whole egg")]
    [InlineData("almond-rolls", "6 rolls of 100 g", "6 pieces of 100 g of dough each, 600 g in all")]
    [InlineData("almond-rolls", "12 rolls with 60 g dough each", "12 pieces of 60 g of dough each, 720 g in all")]
    [InlineData("hazelnut-tin-loaf", "two loaves of 500 g", "2 loaves of 500 g of dough, 1000 g in all")]
    [InlineData("hazelnut-tin-loaf", "under 20 g net for the whole loaf", "was read as 1.43 a slice, for 14 slices")]
    [InlineData("hazelnut-tin-loaf", "under 3 g net per 100 g", "was read as 1.66 a slice: baked, a slice of this formula weighs 55 g")]
    [InlineData("hazelnut-tin-loaf", "can the loaf be under 20 g net", "was read as a figure for one slice")]
    [InlineData("hazelnut-tin-loaf", "how much for a 1.5 litre tin", "was taken to be 213 x 109 x 64 mm inside")]
    [InlineData("cocoa-cake", "could I use flax eggs instead of the eggs?", "the water with it is worked out anew")]
    [InlineData("cocoa-cake", "how long do I bake two cakes at once", "the time is that of one")]
    [InlineData("hazelnut-tin-loaf", "10 g protein a slice", "was read as at least that")]
    [InlineData("hazelnut-tin-loaf", "I only have 3 eggs, how much of the rest?", "was read as 0.75 times the formula, which has 4")]
    [InlineData("almond-rolls", "I need 36 for a party", "'36' was read as so many pieces")]
    [InlineData("cocoa-cake", "leave out one egg", "how many fewer is worked out")]
    [InlineData("cocoa-cake", "butter to ghee ok?", "'ghee' was read as to come in place of 'butter'")]
    [InlineData("seeded-free-form-loaf", "all sunflower, no pumpkin", "'sunflower' was read as to come in place of 'pumpkin'")]
    [InlineData("vanilla-muffins", "baking powder: alternatives?", "a question what can stand in for 'baking powder'")]
    [InlineData("vanilla-muffins", "that coconut flour: out?", "a question whether 'coconut flour' can be left out")]
    [InlineData("hazelnut-tin-loaf", "dairy in this?", "'dairy in this' was read as a question whether it can be made without that")]
    [InlineData("seeded-free-form-loaf", "less vinegar", "at most 22.5 g of cider vinegar; the formula has 30 g")]
    [InlineData("hazelnut-tin-loaf", "have you a bigger loaf that stays within my carbs?", "read as 1.5 times the formula")]
    [InlineData("hazelnut-tin-loaf", "I only have 120 g of hazelnut flour", "read as 0.667 times the formula, which has 180 g")]
    [InlineData("hazelnut-tin-loaf", "egg substitute?", "what can stand in for 'egg substitute'")]
    [InlineData("cocoa-cake", "a slice mustn't go beyond 220 kcal", "read as a wish for at most that")]
    [InlineData("hazelnut-tin-loaf", "is the psyllium a problem?", "read as a question whether it can be made without that")]
    [InlineData("hazelnut-tin-loaf", "leave out the eggs or make it bigger?", "read as a wish for both")]
    [InlineData("hazelnut-tin-loaf", "I only have olive oil. Skip the salt?", "olive oil was taken to come in place of unsalted butter")]
    [InlineData("pumpkin-spice-cake", "Dairy free version please, also is ghee ok?", "No: ghee holds milk")]
    [InlineData("cocoa-cake", "I'm vegan, is butter ok?", "No: unsalted butter is not vegan")]
    [InlineData("hazelnut-tin-loaf", "The baked loaf should weigh 700 g", "700 g was read as what the dough weighs before it is baked")]
    [InlineData("cocoa-cake", "is a slice under 3 g net?", "Whether it is so as it stands was read as a wish")]
    [InlineData("cocoa-cake", "are the slices under 3 g net?", "Whether it is so as it stands was read as a wish")]
    [InlineData("hazelnut-tin-loaf", "it's a bit bland", "'a bit bland' was read as a wish: saltier")]
    [InlineData("almond-rolls", "I have pea protein left over from my daughter's vegan phase, could that take the place of the whey?", "'vegan phase' was read as a wish: vegan")]
    [InlineData("cocoa-cake", "I forgot the vanilla last time. Can I leave out the cream of tartar?", "what can stand in for 'forgot the vanilla'")]
    [InlineData("almond-rolls", "they get soft in the bag", "'soft' was read as a wish: softer")]
    [InlineData("cocoa-cake", "half size pieces please", "'half size' was read as the same amounts parted into 24")]
    [InlineData("hazelnut-tin-loaf", "twice as many slices please", "28 slices as large as they are were taken")]
    [InlineData("hazelnut-tin-loaf", "no butter, coconut oil?", "'coconut oil' was read as to come in place of 'unsalted butter'")]
    [InlineData("hazelnut-tin-loaf", "what instead of eggs? she's allergic", "was read as said of eggs")]
    public void What_is_taken_for_granted_is_said(string formula, string question, string taken) =>
        Assert.Contains(TestQuestions.Read(formula, question).Assumed, said => said.Contains(taken, StringComparison.Ordinal));

    [Theory]
    [InlineData("cocoa-cake", "use ghee and no eggs", "not clear whether ghee is to come in place of whole egg")]
    [InlineData("hazelnut-tin-loaf", "two slices under 3 g net", "or the figure is for 2 slices together")]
    [InlineData("hazelnut-tin-loaf", "increase protein by 5 g", "cannot be answered here")]
    [InlineData("cocoa-cake", "cacao instead of cocoa", "are the same here")]
    [InlineData("hazelnut-tin-loaf", "almond flour?", "In place of what is 'almond flour' to come?")]
    [InlineData("cocoa-cake", "vanilla is essential", "It cannot be asked that something be kept")]
    [InlineData("vanilla-muffins", "no eggs, butter yes", "Not read: butter")]
    [InlineData("hazelnut-tin-loaf", "20 g of carbs for rolls, how long to bake", "'rolls' cannot be answered here")]
    [InlineData("hazelnut-tin-loaf", "use both butter and coconut oil", "Not read: butter, coconut oil")]
    [InlineData("hazelnut-tin-loaf", "can I put walnuts in it?", "Not read: walnuts")]
    [InlineData("hazelnut-tin-loaf", "should the eggs be out of the fridge?", "'out of the fridge' cannot be answered here")]
    public void What_may_mean_two_things_is_not_guessed(string formula, string question, string problem)
    {
        var told = TestQuestions.Read(formula, question);

        Assert.Equal(QuestionKind.NotUnderstood, told.Kind);
        Assert.Contains(problem, told.Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("cocoa-cake", "how long to bake with ghee instead of butter", "The time is that of the loaf with nothing else changed")]
    [InlineData("cocoa-cake", "drop the eggs instead of the butter", "It cannot be asked that something be kept (instead of butter)")]
    [InlineData("cocoa-cake", "in ounces please, without butter", "Not read: in ounces")]
    [InlineData("hazelnut-tin-loaf", "Can I make buns from this, no eggs?", "'buns' would be another bake")]
    [InlineData("almond-rolls", "Can I bake it in a tin, without the whey?", "'in a tin' would be another bake")]
    [InlineData("hazelnut-tin-loaf", "milk instead of water, 260 g", "The amount was not read: 260 g")]
    [InlineData("cocoa-cake", "just as moist without the butter", "be kept (as moist)")]
    [InlineData("hazelnut-tin-loaf", "more slices and softer", "Not read: more slices")]
    [InlineData("cocoa-cake", "One cake without eggs and one without nuts, please.", "Read as one bake with all of it left out")]
    [InlineData("seeded-free-form-loaf", "pumpkin seeds are fine, sunflower isn't", "be kept (pumpkin seeds are fine)")]
    public void What_is_left_of_a_question_is_said(string formula, string question, string problem)
    {
        var told = TestQuestions.Read(formula, question);

        Assert.NotEqual(QuestionKind.NotUnderstood, told.Kind);
        Assert.Contains(problem, told.Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("hazelnut-tin-loaf", "I'm allergic to butter. What can I use instead?", "REPLACE without=milk from=butter")]
    [InlineData("almond-rolls", "I'm allergic to whey", "VARIANT without=milk")]
    [InlineData("seeded-free-form-loaf", "egg free, aquafaba instead", "REPLACE without=egg from=egg-whole to=aquafaba")]
    [InlineData("hazelnut-tin-loaf", "a no egg loaf with 20 slices", "VARIANT without=egg slices=20")]
    [InlineData("hazelnut-tin-loaf", "What can I use in place of eggs? My daughter is allergic.", "REPLACE without=egg from=egg-whole")]
    public void What_somebody_is_allergic_to_stays_out_whatever_comes_in_for_it(string formula, string question, string understood) =>
        Assert.Equal(understood, TestQuestions.Words(TestQuestions.Read(formula, question)));

    [Theory]
    [InlineData("seeded-free-form-loaf", "I'm allergic to eggs, can I use egg whites instead?", "No: egg white holds egg")]
    [InlineData("hazelnut-tin-loaf", "I'm allergic to eggs but I have egg whites", "No: egg white holds egg")]
    [InlineData("hazelnut-tin-loaf", "ghee instead of butter, and no dairy please", "No: ghee holds milk")]
    [InlineData("cocoa-cake", "I'm coeliac. Rye flour where almond flour is, any good?", "No: medium rye flour holds gluten cereals")]
    [InlineData("cocoa-cake", "coeliac here: try rye flour over almond flour?", "No: medium rye flour holds gluten cereals")]
    public void What_holds_what_is_to_be_left_out_does_not_come_in(string formula, string question, string problem)
    {
        var told = TestQuestions.Read(formula, question);

        Assert.Equal(QuestionKind.NotUnderstood, told.Kind);
        Assert.Contains(problem, told.Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("cocoa-cake", "low salt, 0.5 g max a slice", "REFORMULATE targets=less-salt+sodium=..200")]
    [InlineData("hazelnut-tin-loaf", "at least 5 g protein and at most 8 g protein a slice", "REFORMULATE targets=protein=5..8")]
    [InlineData("hazelnut-tin-loaf", "a version with fewer than 4 eggs", "REFORMULATE targets=eggs=..3")]
    [InlineData("hazelnut-tin-loaf", "how long do two loaves of 500 g bake?", "BAKE mass=500")]
    [InlineData("hazelnut-tin-loaf", "half a loaf instead of a whole", "NOT_UNDERSTOOD")]
    [InlineData("hazelnut-tin-loaf", "half the recipe, 450 g", "NOT_UNDERSTOOD")]
    public void A_figure_keeps_its_unit_and_its_end(string formula, string question, string understood) =>
        Assert.Equal(understood, TestQuestions.Words(TestQuestions.Read(formula, question)));

    [Fact]
    public void Nuts_are_said_to_be_tree_nuts() =>
        Assert.Contains(TestQuestions.Read("hazelnut-tin-loaf", "no nuts please").Assumed, taken => taken.Contains("peanuts", StringComparison.Ordinal));

    private static string Understood(ReferenceRow row) => TestQuestions.Words(TestQuestions.Read(row["formula"], row["question"]));
}
