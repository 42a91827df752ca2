using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Panels;

namespace SwapSolver.Solving.Tests.Panels;

/// <summary>Invented packets of the fictional Larkfield Bakehouse.</summary>
public sealed class PanelCompositionTests
{
    private const string Almond = "energyKcal 170, fat 15, saturatedFat 1, sodium 0, carbohydrate 6, sugars 1, protein 6";

    [Fact]
    public void A_European_figure_for_100_g_stands_as_printed()
    {
        var answer = Packet.Read(TestPanels.Eu("100", "energyKcal 356, fat 14, saturatedFat 12, carbohydrate 22, sugars 9.2, fibre 37, protein 17, salt 0.12"), "coconut-flour");

        Assert.Equal(new Figure(new(16.5, 17, 17.5), TestPanels.Foods.PacketSource, Mark.Published, null), answer.Figures[Fact.Protein]);
        // 0.12 g of salt, 0.115 to 0.125, are 48 mg of sodium, 46 to 50.
        Assert.Equal(new Figure(new(46, 48, 50), TestPanels.Foods.PacketSource, Mark.Calculated, null), answer.Figures[Fact.Sodium]);
        // By difference with fibre within: 22 + 37 = 59 g, half a gram each way of both.
        Assert.Equal((58d, 60d), (answer.Figures[Fact.Carbohydrate].Range.Low, answer.Figures[Fact.Carbohydrate].Range.High));
    }

    [Fact]
    public void Fibre_that_is_not_printed_is_taken_after_the_like_and_said_so()
    {
        var answer = Packet.Read(TestPanels.Us("28", Almond), "almond-flour-blanched");
        var like = TestKitchen.Ingredient("almond-flour-blanched").RangeOf(Fact.Fibre)!.Value;

        var fibre = answer.Figures[Fact.Fibre];
        Assert.Equal((TestPanels.Foods.LikeSource, Mark.Memory), (fibre.Source, fibre.Mark));
        Assert.True(fibre.Range.Low < like.Typical && fibre.Range.High > like.Typical, $"{fibre.Range}");
        Assert.Contains(answer.Notes, note => note.Contains("fibre", StringComparison.Ordinal) && note.Contains("blanched almond flour", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_a_like_what_is_not_printed_is_not_known()
    {
        var answer = Packet.Read(TestPanels.Us("28", Almond));

        Assert.DoesNotContain(Fact.Fibre, answer.Figures.Keys);
        Assert.DoesNotContain(Fact.Potassium, answer.Figures.Keys);
        Assert.Contains(answer.Notes, note => note.Contains("not known: fibre", StringComparison.Ordinal));
        // Water and ash are what the rest leaves of 100 g: 28 g less 14.5, 5.5 and 5.5 at the least are 2.5 g of 27.5 to 28.5.
        Assert.InRange(answer.Figures[Fact.Water].Range.High, 2.5 / 28.5 * 100, 15);
    }

    [Fact]
    public void A_like_that_the_figures_speak_against_gives_way_and_that_is_said()
    {
        var answer = Packet.Read(TestPanels.Us("28", Almond), "water");

        Assert.Null(answer.Clash);
        Assert.Equal(6d / 28 * 100, answer.Figures[Fact.Protein].Range.Typical, 3d);
        Assert.Contains(answer.Notes, note => note.Contains("do not fit water", StringComparison.Ordinal));
    }

    [Fact]
    public void A_printed_figure_goes_before_the_like_even_where_the_like_never_has_it()
    {
        var answer = Packet.Read(TestPanels.Eu("100", "fat 40, carbohydrate 10, fibre 10, protein 30"), "almond-flour-blanched");

        Assert.Equal(new(39.5, 40, 40.5), answer.Figures[Fact.Fat].Range);
        Assert.Equal(new(29.5, 30, 30.5), answer.Figures[Fact.Protein].Range);
    }

    [Fact]
    public void Where_a_small_serving_says_little_the_middle_is_after_the_like()
    {
        // 0.5 g of 5 g may be 0.5 to 0.75 g, so 9 to 17 g of 100; cocoa of the table has 13.7 g.
        var answer = Packet.Read(TestPanels.Us("5", "energyKcal 10, fat 0.5, carbohydrate 3, fibre 2, sugars 0, protein 1"), "cocoa-natural");

        Assert.Equal(13.7, answer.Figures[Fact.Fat].Range.Typical, 0.5);
        Assert.Equal(9.09, answer.Figures[Fact.Fat].Range.Low, 0.01);
        Assert.Equal(16.67, answer.Figures[Fact.Fat].Range.High, 0.01);
    }

    [Fact]
    public void What_comes_of_a_panel_makes_an_ingredient()
    {
        var like = TestKitchen.Ingredient("almond-flour-blanched");
        var food = new StatedFood { Id = "my-almond", Name = "my almond flour", Origin = FoodOrigin.Packet, Like = like.Id, Figures = Packet.Read(TestPanels.Us("28", Almond), like.Id).Figures };
        var bakehouse = TestKitchen.Bakehouse;

        var made = new FoodIngredient(TestPanels.Foods, bakehouse.Pantry.Allergens, new FoodWords(bakehouse.Phrases)).Of(food, like);

        Assert.Empty(Fact.All.Where(fact => like.RangeOf(fact) is not null && made.RangeOf(fact) is null));
        Assert.Equal(food.Figures[Fact.Fat].Range, made.RangeOf(Fact.Fat));
    }

    [Fact]
    public void No_time_is_no_answer_and_no_refusal()
    {
        var over = new Deadline(TimeProvider.System, TimeProvider.System.GetUtcNow().AddSeconds(-1));

        Assert.Equal(PanelAnswer.OutOfTime, Packet.Composition.Of(TestPanels.Us("28", Almond), null, over, CancellationToken.None));
    }

    [Fact]
    public void A_caller_who_has_gone_is_not_worked_for() => Assert.Throws<OperationCanceledException>(
        () => Packet.Composition.Of(TestPanels.Us("28", Almond), null, Ask.Ample, new CancellationToken(canceled: true)));
}
