using SwapSolver.Kitchen.Panels;
using SwapSolver.Loaves;
using SwapSolver.Solving.Panels;

namespace SwapSolver.Solving.Tests.Panels;

/// <summary>Panels that cannot be true are refused, and the figures that clash are named: all of them and no others.</summary>
public sealed class ImpossiblePanelTests
{
    private const string Serving = "serving";

    /// <summary>Basis, serving, figures, the set that clashes, and what the sentence must say. The hand's reason stands
    /// above each; energy by 4, 9 and 4 kcal/g.</summary>
    public static TheoryData<PanelBasis, string, string, string, string> Impossible => new()
    {
        // 20 of 12.
        { PanelBasis.EuropeanUnion, "100", "energyKcal 380, fat 30, carbohydrate 12, sugars 20, protein 12", "carbohydrate sugars", "sugars 20 g is more than carbohydrate 12 g" },
        { PanelBasis.UnitedStates, "30", "energyKcal 100, fat 5, saturatedFat 9, carbohydrate 12", "fat saturatedFat", "saturated fat 9 g is more than fat 5 g" },
        // 30 x 9 kcal are 270 already. By the least factor of a fat 29.5 x 8.3; fibre by another analysis may be 1.5 % of the
        // serving more than the carbohydrate that it is part of, and takes 3 kcal off each; and a twentieth off: 230.
        { PanelBasis.UnitedStates, "60", "energyKcal 150, fat 30, carbohydrate 12, protein 8", "energyKcal fat", "energy 150 kcal does not follow from fat 30 g: that would be at least 230 kcal" },
        // 3 x 9 + 20 x 4 + 3 x 4 = 119 kcal.
        { PanelBasis.UnitedStates, "40", "energyKcal 250, fat 3, saturatedFat 1, carbohydrate 20, protein 3", "energyKcal fat carbohydrate protein", "at most 138 kcal" },
        // 60 + 50 are above 100 without the protein.
        { PanelBasis.EuropeanUnion, "100", "energyKcal 780, fat 60, carbohydrate 50, protein 10", "fat carbohydrate", "fat 60 g and carbohydrate 50 g add up to more than 100 g can hold" },
        { PanelBasis.EuropeanUnion, "100", "fat 60, carbohydrate 25, fibre 10, protein 10", "fat carbohydrate fibre protein", "add up to more than 100 g" },
        { PanelBasis.UnitedStates, "30", "energyKcal 200, fat 10, carbohydrate 20, protein 10", "serving fat carbohydrate protein", "fat 10 g, carbohydrate 20 g and protein 10 g add up to more than the serving of 30 g can hold" },
        // 8 g of fibre and 10 g of sugars in 12 g; in Europe fibre stands outside, and the same figures are true.
        { PanelBasis.UnitedStates, "50", "carbohydrate 12, fibre 8, sugars 10", "carbohydrate fibre sugars", "fibre 8 g and sugars 10 g add up to more than carbohydrate 12 g, which they are parts of" },
        // 780 kcal are 3264 kJ.
        { PanelBasis.EuropeanUnion, "100", "energyKcal 780, energyKilojoules 780, protein 10", "energyKcal energyKilojoules", "energy 780 kcal and energy 780 kJ contradict each other" },
        // 1.5 g of salt are 600 mg of sodium.
        { PanelBasis.EuropeanUnion, "100", "salt 1.5, sodium 1500, fat 3", "salt sodium", "salt 1.5 g and sodium 1500 mg contradict each other" },
        // Nothing has more than 9 kcal/g: 5 g give 45.
        { PanelBasis.UnitedStates, "5", "energyKcal 100, sodium 5", "serving energyKcal", "does not follow from the serving of 5 g" },
        { PanelBasis.EuropeanUnion, "100", "energyKcal 1000, protein 5", "energyKcal", "energy 1000 kcal does not follow from 100 g: that would be at most" },
        { PanelBasis.UnitedStates, "30", "fat 40, saturatedFat 5", "serving fat", "fat 40 g is more than the serving of 30 g can hold" },
        // 100 g of carbohydrate with no sugar alcohol are 400 kcal; with it the same panel is true.
        { PanelBasis.EuropeanUnion, "100", "energyKcal 0, fat 0, carbohydrate 100, protein 0", "energyKcal carbohydrate", "enter that too" },
        // Carbohydrate holds the polyols in Europe.
        { PanelBasis.EuropeanUnion, "100", "carbohydrate 10, polyols 20", "carbohydrate polyols", "polyols 20 g is more than carbohydrate 10 g" },
        { PanelBasis.UnitedStates, "30", "carbohydrate 28, polyols 10, erythritol 20", "polyols erythritol", "erythritol 20 g is more than sugar alcohol 10 g" },
        // 50 g of salt are 20 g of sodium, which leave 46 g of ash as carbonate.
        { PanelBasis.EuropeanUnion, "100", "fat 60, salt 50", "fat salt", "add up to more than 100 g" },
        // 2000 kJ are 478 kcal; 5 x 9 + 10 x 4 + 5 x 4 = 105. By the most that rounding and factors leave,
        // 5.5 x 9.1 + 10.5 x 4.2 + 5.5 x 4.4 + 0.5 x 4.2 = 120.45, a twentieth on and 4.35 kJ each: 550.2.
        { PanelBasis.EuropeanUnion, "100", "energyKilojoules 2000, fat 5, carbohydrate 10, fibre 0, protein 5", "energyKilojoules fat carbohydrate fibre protein", "that would be at most 551 kJ" },
        // 29.5 x 8.3 less 1.5 x 3, a twentieth off and 4 kJ each: 913.3.
        { PanelBasis.EuropeanUnion, "100", "energyKilojoules 500, fat 30", "energyKilojoules fat", "that would be at least 913 kJ" },
        // Fibre stands outside of carbohydrate in Europe, and is no part of it.
        { PanelBasis.EuropeanUnion, "100", "carbohydrate 60, fibre 50", "carbohydrate fibre", "carbohydrate 60 g and fibre 50 g add up to more than 100 g can hold" },
        { PanelBasis.EuropeanUnion, "100", "fat 120, protein 5", "fat", "fat 120 g is more than 100 g can hold" },
    };

    [Theory]
    [MemberData(nameof(Impossible))]
    public void An_impossible_panel_is_refused_with_the_clash_by_name(
        PanelBasis basis, string serving, string figures, string clashing, string says)
    {
        var answer = Packet.Read(TestPanels.Of(basis, serving, figures));

        Assert.NotNull(answer.Clash);
        Assert.Empty(answer.Figures);
        Assert.Equal(clashing.Split(' ').Order(StringComparer.OrdinalIgnoreCase), Names(answer.Clash).Order(StringComparer.OrdinalIgnoreCase), StringComparer.OrdinalIgnoreCase);
        Assert.Contains(says, answer.Clash.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_clash_is_told_the_whole_before_its_part_and_is_the_same_whatever_the_food_is_like()
    {
        var panel = TestPanels.Eu("100", "energyKcal 380, fat 30, carbohydrate 12, sugars 20, protein 12");

        var clash = Packet.Read(panel).Clash!;
        Assert.Equal([PanelLine.Carbohydrate, PanelLine.Sugars], clash.Figures.Select(figure => figure.Line!.Value));
        var like = Packet.Read(panel, "almond-flour-blanched");
        Assert.Equal(clash.Words, like.Clash!.Words);
        Assert.False(like.EndedEarly);
    }

    [Fact]
    public void Energy_that_no_food_of_such_figures_has_is_refused_after_a_like_too()
    {
        // 5.5 x 9.1 + 10.5 x 4.2 + 5.5 x 4.4 + 5.5 x 4.2 = 141.45 and a twentieth on: 148.5. Almond flour has no more by its own
        // figures than by those factors.
        var clash = Packet.Read(TestPanels.Eu("100", "energyKcal 200, fat 5, carbohydrate 10, fibre 5, protein 5"), "almond-flour-blanched").Clash!;
        Assert.Contains("at most 149 kcal", clash.Words, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Impossible))]
    public void Without_any_one_of_them_the_rest_of_a_clash_can_be_true(
        PanelBasis basis, string serving, string figures, string clashing, string says)
    {
        var panel = TestPanels.Of(basis, serving, figures);
        _ = (clashing, says);

        AssertSmallest(panel, Packet.Read(panel).Clash!);
    }

    [Theory]
    [InlineData(PanelBasis.EuropeanUnion, "100", "carbohydrate 12, fibre 8, sugars 10")]
    [InlineData(PanelBasis.EuropeanUnion, "100", "energyKcal 0, fat 0, carbohydrate 100, polyols 100, protein 0")]
    [InlineData(PanelBasis.EuropeanUnion, "100", "energyKcal 780, energyKilojoules 3264")]
    [InlineData(PanelBasis.UnitedStates, "30", "energyKcal 170, fat 15, saturatedFat 1, carbohydrate 6, fibre 3, sugars 1, protein 6")]
    public void The_same_figures_where_they_can_be_true_are_not_refused(PanelBasis basis, string serving, string figures) =>
        Assert.Null(Packet.Read(TestPanels.Of(basis, serving, figures)).Clash);

    /// <summary>Acetic acid, alcohol and leavening gas stand on no panel: these rows of the table (USDA SR 26: vinegar 02048,
    /// vanilla extract 02050, baking powder 18369, for 100 g) clash by themselves, and are true after what they are like.</summary>
    [Theory]
    [InlineData("energyKcal 288, fat 0, carbohydrate 13, fibre 0, sugars 13, protein 0", "vanilla-extract")]
    [InlineData("energyKcal 21, fat 0, carbohydrate 0.9, fibre 0, sugars 0.4, protein 0", "vinegar-cider")]
    [InlineData("energyKcal 53, fat 0, carbohydrate 28, fibre 0, sugars 0, protein 0, salt 26.5", "baking-powder-double-acting")]
    public void What_no_panel_prints_is_known_by_what_the_food_is_like(string figures, string like)
    {
        var panel = TestPanels.Eu("100", figures);

        Assert.NotNull(Packet.Read(panel).Clash);
        Assert.Null(Packet.Read(panel, like).Clash);
    }

    [Fact]
    public void One_figure_pushed_far_out_of_a_true_panel_is_among_those_named()
    {
        var chance = new Random(20260803);
        var pushedPanels = 0;
        foreach (var food in KnownFoods.Table)
        {
            var basis = chance.Next(2) == 0 ? PanelBasis.UnitedStates : PanelBasis.EuropeanUnion;
            var grams = basis == PanelBasis.EuropeanUnion ? 100 : 10 + chance.Next(100);
            var panel = food.Print(basis, grams, chance);
            if (Packet.Read(panel).Clash is not null)
            {
                continue;
            }

            pushedPanels++;
            var pushed = panel.Figures.Keys.Order().ElementAt(chance.Next(panel.Figures.Count));
            // Above what the serving can hold: half as much again in grams, and 12 kcal/g.
            var far = pushed switch
            {
                PanelLine.EnergyKcal => grams * 12,
                PanelLine.EnergyKilojoules => grams * 50,
                PanelLine.Sodium or PanelLine.Potassium or PanelLine.Calcium or PanelLine.Iron => grams * 1500,
                _ => (grams * 3 / 2) + 1,
            };
            var wrong = panel with { Figures = panel.Figures.SetItem(pushed, TestPanels.Figure($"{far}")) };
            var clash = Packet.Read(wrong).Clash;

            Assert.True(clash is not null, $"{food.Name}: {pushed} {far} in {grams} g passed");
            Assert.Contains(clash.Figures, figure => figure.Line == pushed);
            AssertSmallest(wrong, clash);
        }

        Assert.True(pushedPanels >= 100, $"only {pushedPanels} panels were true to begin with");
    }

    private static IEnumerable<string> Names(PanelClash clash) => clash.Figures.Select(figure => figure.Line?.ToString() ?? Serving);

    private static void AssertSmallest(NutritionPanel panel, PanelClash clash)
    {
        var holds = new PanelHolds(
            [.. clash.Figures.Select(figure => figure.Line).OfType<PanelLine>()],
            clash.Figures.Any(figure => figure.Line is null) || panel.IsPerHundredGrams);
        Assert.False(Packet.CanBeTrue(panel, holds), clash.Words);
        Assert.All(clash.Figures, figure => Assert.True(Packet.CanBeTrue(panel, holds.Without(figure.Line)), $"{clash.Words}: not needed is {figure.Words}"));
    }
}
