using CsCheck;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Panels;

public sealed class RoundingRuleTests
{
    private static readonly ReferenceTable Amounts = ReferenceTable.Read("Panels/Reference/rounded-amounts.csv");

    public static TheoryData<string> Rows => [.. Amounts.Names];

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_printed_figure_stands_for_the_amounts_that_the_law_prints_so_and_for_no_others(string name)
    {
        var row = Amounts[name];
        var range = TestPanels.Rules.IntervalOf(
            Enum.Parse<PanelBasis>(row["basis"]), Enum.Parse<PanelLine>(row["line"]), TestPanels.Figure(row["printed"]));
        var amount = row.Number("amount");

        Assert.True((row["lies"] == "inside") == (amount >= range.Low - 1e-12 && amount <= range.High + 1e-12), $"{range} {row.Against(amount)}");
    }

    /// <summary>What a maker prints finer or coarser than asked: half a unit of its own last digit, worked by hand.</summary>
    [Theory]
    [InlineData(PanelBasis.UnitedStates, PanelLine.Carbohydrate, "21.3", 21.25, 21.35)]
    [InlineData(PanelBasis.UnitedStates, PanelLine.Fat, "4.3", 4.25, 4.35)]
    [InlineData(PanelBasis.UnitedStates, PanelLine.Fat, "3.5", 3.25, 3.75)]
    [InlineData(PanelBasis.UnitedStates, PanelLine.Fat, "3", 2.75, 3.25)]
    [InlineData(PanelBasis.UnitedStates, PanelLine.EnergyKcal, "252", 251.5, 252.5)]
    [InlineData(PanelBasis.UnitedStates, PanelLine.Potassium, "235", 234.5, 235.5)]
    [InlineData(PanelBasis.EuropeanUnion, PanelLine.Fat, "14.27", 14.265, 14.275)]
    [InlineData(PanelBasis.EuropeanUnion, PanelLine.Fat, "3", 2.5, 3.5)]
    [InlineData(PanelBasis.EuropeanUnion, PanelLine.Fat, "3.0", 2.95, 3.05)]
    [InlineData(PanelBasis.EuropeanUnion, PanelLine.Fat, "0.0", 0, 0.5)]
    [InlineData(PanelBasis.EuropeanUnion, PanelLine.Fat, "0.00", 0, 0.005)]
    public void A_figure_is_as_fine_as_its_digits_say(PanelBasis basis, PanelLine line, string printed, double low, double high)
    {
        var range = TestPanels.Rules.IntervalOf(basis, line, TestPanels.Figure(printed));

        Assert.Equal(low, range.Low, 1e-9);
        Assert.Equal(high, range.High, 1e-9);
        Assert.Equal(TestPanels.Figure(printed).Value.Value, range.Typical);
    }

    [Fact]
    public void Whatever_a_label_prints_stands_for_the_amount_that_it_was_printed_from() =>
        Gen.Select(Gen.Bool, Gen.Int[0, Lawful.Length - 1], Gen.Double[-4, 2.9], Gen.Int[0, 1000]).Sample(
            (isAmerican, index, size, seed) =>
            {
                var (basis, line) = (isAmerican ? PanelBasis.UnitedStates : PanelBasis.EuropeanUnion, Lawful[index]);
                var amount = Math.Pow(10, size);
                var printed = new LabelPrinter(new Random(seed)).Print(basis, line, amount);
                var range = TestPanels.Rules.IntervalOf(basis, line, TestPanels.Figure(printed));
                Assert.True(range.IsInOrder && range.Low >= 0, $"{range}");
                Assert.True(amount >= range.Low - 1e-9 && amount <= range.High + 1e-9, $"{basis} {line} {amount} prints {printed}, read as {range}");
            },
            iter: 20_000);

    [Fact]
    public void A_serving_in_the_United_States_stands_for_the_weights_that_are_printed_so() =>
        Gen.Double[0.2, 300].Sample(grams =>
        {
            var panel = TestPanels.Us(LabelPrinter.PrintServing(grams), string.Empty);
            var range = TestPanels.Rules.ServingOf(panel);
            Assert.True(grams >= range.Low - 1e-9 && grams <= range.High + 1e-9, $"{grams} g prints {panel.Serving}, read as {range}");
        });

    [Fact]
    public void A_European_panel_for_100_g_is_for_100_g_sharp()
    {
        Assert.Equal((100, 100), (TestPanels.Rules.ServingOf(TestPanels.Eu("100", string.Empty)).Low, TestPanels.Rules.ServingOf(TestPanels.Eu("100", string.Empty)).High));
        Assert.Equal((99.5, 100.5), (TestPanels.Rules.ServingOf(TestPanels.Us("100", string.Empty)).Low, TestPanels.Rules.ServingOf(TestPanels.Us("100", string.Empty)).High));
    }

    /// <summary>Lines that both laws, or the minerals' guidance, speak of.</summary>
    private static PanelLine[] Lawful =>
    [
        PanelLine.EnergyKcal, PanelLine.Fat, PanelLine.SaturatedFat, PanelLine.Carbohydrate, PanelLine.Fibre, PanelLine.Sugars,
        PanelLine.Polyols, PanelLine.Protein, PanelLine.Sodium, PanelLine.Potassium, PanelLine.Calcium, PanelLine.Iron,
    ];
}
