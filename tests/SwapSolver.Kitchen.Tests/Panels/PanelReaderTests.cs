using SwapSolver.Kitchen.Panels;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Panels;

public sealed class PanelReaderTests
{
    private static readonly PanelReader Reader = new(TestPanels.Rules, TestKitchen.Bakehouse.Phrases);

    private static readonly Dictionary<PanelLine, string> Some = new() { [PanelLine.Fat] = "14", [PanelLine.SaturatedFat] = "<0,5" };

    [Fact]
    public void A_panel_keeps_what_is_printed()
    {
        var (panel, problems) = Reader.Read(PanelBasis.UnitedStates, "28", Some);

        Assert.Empty(problems);
        Assert.Equal("28", panel!.Serving.Text);
        Assert.Equal(["14", "<0.5"], panel.Figures.OrderBy(pair => pair.Key).Select(pair => pair.Value.Text));
    }

    [Theory]
    [InlineData("0")]
    [InlineData("0.0")]
    [InlineData("NaN")]
    [InlineData("-30")]
    [InlineData("<5")]
    [InlineData("2001")]
    [InlineData("")]
    public void A_serving_must_be_a_weight(string serving)
    {
        var (panel, problems) = Reader.Read(PanelBasis.UnitedStates, serving, Some);

        Assert.Null(panel);
        var problem = Assert.Single(problems);
        Assert.Equal(("serving", serving), (problem.Field, problem.Value));
        Assert.NotEmpty(problem.Reason);
        Assert.NotEmpty(problem.WayOut);
    }

    [Fact]
    public void Every_mistake_is_named_at_once_by_its_line()
    {
        var (panel, problems) = Reader.Read(
            PanelBasis.EuropeanUnion,
            "0",
            new Dictionary<PanelLine, string> { [PanelLine.SaturatedFat] = "-1", [PanelLine.EnergyKcal] = "NaN", [PanelLine.Fat] = "3" });

        Assert.Null(panel);
        Assert.Equal(["serving", "energyKcal", "saturatedFat"], problems.Select(problem => problem.Field));
        Assert.Equal(["0", "NaN", "-1"], problems.Select(problem => problem.Value));
    }

    [Fact]
    public void A_panel_without_a_figure_says_nothing()
    {
        var (panel, problems) = Reader.Read(PanelBasis.UnitedStates, "30", new Dictionary<PanelLine, string>());

        Assert.Null(panel);
        Assert.Equal("figures", Assert.Single(problems).Field);
    }
}
