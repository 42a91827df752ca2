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
        Assert.DoesNotContain(answer.Notes, note => note.Contains("do not fit", StringComparison.Ordinal));
        Assert.False(answer.EndedEarly);
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
    public void Where_sugar_alcohol_is_printed_erythritol_is_said_within_it_and_nothing_else_is_made_up()
    {
        var answer = Packet.Read(TestPanels.Eu("100", "fat 10, carbohydrate 40, polyols 30, protein 20"));

        // From none of it to all of the 30.5 g that 30 may stand for.
        Assert.Equal((0, 30.5), (answer.Figures[Fact.Erythritol].Range.Low, answer.Figures[Fact.Erythritol].Range.High));
        Assert.DoesNotContain(Fact.Allulose, answer.Figures.Keys);
        Assert.DoesNotContain(Fact.Starch, answer.Figures.Keys);
        Assert.DoesNotContain(Fact.Calcium, answer.Figures.Keys);
    }

    [Fact]
    public void Water_and_ash_are_what_fat_carbohydrate_and_protein_leave_and_without_one_of_them_nobody_knows()
    {
        Assert.Contains(Fact.Water, Packet.Read(TestPanels.Eu("100", "fat 10, carbohydrate 40, protein 20")).Figures.Keys);
        Assert.DoesNotContain(Fact.Water, Packet.Read(TestPanels.Eu("100", "fat 10, protein 20")).Figures.Keys);
        Assert.DoesNotContain(Fact.Ash, Packet.Read(TestPanels.Eu("100", "carbohydrate 40, protein 20")).Figures.Keys);
    }

    [Fact]
    public void Only_what_stands_on_the_packet_is_marked_as_read_there()
    {
        // 0.1 g of salt are 40 mg of sodium; that 40 stands there for the fibre is nothing to it.
        var figures = Packet.Read(TestPanels.Eu("100", "fat 10, carbohydrate 10, fibre 40, protein 20, salt 0.1")).Figures;

        Assert.Equal((40, Mark.Calculated), (figures[Fact.Sodium].Range.Typical, figures[Fact.Sodium].Mark));
        Assert.Equal((40, Mark.Published), (figures[Fact.Fibre].Range.Typical, figures[Fact.Fibre].Mark));
        // Of a serving of 50 g nothing is for 100 g as it stands.
        Assert.Equal(Mark.Calculated, Packet.Read(TestPanels.Eu("50", "fat 10, carbohydrate 10, protein 20")).Figures[Fact.Fat].Mark);
    }

    [Fact]
    public void What_is_not_printed_is_in_the_middle_what_the_rest_leaves()
    {
        // Ash as usual, 1.5 g; water the rest of 100 g, up to 1.5 g more than the least of the others leave; energy by 9, 4 and 4.
        var figures = Packet.Read(TestPanels.Eu("100", "fat 10, carbohydrate 40, protein 20")).Figures;

        Assert.Equal(1.5, figures[Fact.Ash].Range.Typical, 1e-4);
        Assert.Equal(100 - 10 - 40 - 20 - 1.5, figures[Fact.Water].Range.Typical, 1e-4);
        Assert.Equal(100 - 9.5 - 39.5 - 19.5 + 1.5, figures[Fact.Water].Range.High, 1e-4);
        Assert.Equal((9 * 10) + (4 * 40) + (4 * 20), figures[Fact.Energy].Range.Typical, 1e-3);
    }

    [Fact]
    public void In_the_middle_a_serving_weighs_what_is_printed()
    {
        // 28 g may be 27.5 to 28.5 g; the figures go into it 100 / 28 times.
        var figures = Packet.Read(TestPanels.Us("28", "fat 15, carbohydrate 6, protein 6")).Figures;

        Assert.Equal(15d / 28 * 100, figures[Fact.Fat].Range.Typical, 1e-3);
        Assert.Equal(6d / 28 * 100, figures[Fact.Protein].Range.Typical, 1e-3);
        Assert.Equal(100 - (27d / 28 * 100) - 1.5, figures[Fact.Water].Range.Typical, 1e-3);
    }

    [Fact]
    public void Erythritol_gives_no_energy_by_the_general_factors()
    {
        // Regulation (EU) No 1169/2011, Annex XIV: polyols 2.4 kcal/g, erythritol 0.
        Assert.InRange(Packet.Read(TestPanels.Eu("100", "fat 0, carbohydrate 97, polyols 97, erythritol 97, protein 0")).Figures[Fact.Energy].Range.Typical, 0, 20);
        Assert.InRange(Packet.Read(TestPanels.Eu("100", "fat 0, carbohydrate 97, polyols 97, erythritol 0, protein 0")).Figures[Fact.Energy].Range.Typical, 220, 250);
    }

    [Fact]
    public void Sugar_alcohol_and_the_like_are_looked_for_only_where_something_says_so()
    {
        PanelCase Of(string figures, string? like = null) =>
            new(TestPanels.Rules, TestPanels.Foods, TestPanels.Eu("100", figures), like is null ? null : TestKitchen.Ingredient(like));

        Assert.True(Of("fat 10").MayHold(Fact.Starch));
        Assert.False(Of("fat 10").MayHold(Fact.Polyols));
        Assert.True(Of("polyols 10").MayHold(Fact.Erythritol));
        Assert.True(Of("erythritol 10").MayHold(Fact.Polyols));
        Assert.False(Of("erythritol 10").MayHold(Fact.Alcohol));
        Assert.False(Of("polyols 10").MayHold(Fact.Allulose));
        // Almond flour has none; erythritol has.
        Assert.False(Of("fat 10", "almond-flour-blanched").MayHold(Fact.Polyols));
        Assert.True(Of("fat 10", "erythritol").MayHold(Fact.Polyols));
        // What is taken after another is a quarter less sure: almond flour has 7.92 to 11.88 g of fibre, 9.9 in the middle.
        var fibre = Of("fat 10", "almond-flour-blanched").FamilyOf(Fact.Fibre)!.Value;
        Assert.Equal(9.9 - (1.25 * 1.98), fibre.Low, 1e-9);
        Assert.Equal(9.9 + (1.25 * 1.98), fibre.High, 1e-9);
        Assert.Null(Of("fat 10").FamilyOf(Fact.Fibre));
    }

    [Fact]
    public void Alcohol_that_a_packet_counts_into_carbohydrate_is_told_apart_from_it()
    {
        // 47 g are what vanilla extract leaves of 100 g: 12.65 g of carbohydrate and 34.39 g of alcohol, as the table has them. Of 46.5 g
        // no more than 34.39 + 1.25 x 1.61 are alcohol: 10.0975 g are left. At the most it is what the least of the others leave of
        // 101.5 g: 46.605 g of water, 25.1525 g of alcohol, 0.2275 g of ash and 0.00625 g of saturated fat.
        var figures = Packet.Read(TestPanels.Eu("100", "fat 0, carbohydrate 47, protein 0"), "vanilla-extract").Figures;

        Assert.Equal(12.65, figures[Fact.Carbohydrate].Range.Typical, 0.05);
        Assert.Equal(34.39, figures[Fact.Alcohol].Range.Typical, 0.05);
        Assert.Equal((10.0975, 29.50875), (figures[Fact.Carbohydrate].Range.Low, Math.Round(figures[Fact.Carbohydrate].Range.High, 5)));
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

        Assert.True(PanelAnswer.OutOfTime.EndedEarly);
        Assert.Equal(PanelAnswer.OutOfTime, Packet.Composition.Of(TestPanels.Us("28", Almond), null, over, CancellationToken.None));
    }

    [Fact]
    public void A_caller_who_has_gone_is_not_worked_for() => Assert.Throws<OperationCanceledException>(
        () => Packet.Composition.Of(TestPanels.Us("28", Almond), null, Ask.Ample, new CancellationToken(canceled: true)));
}
