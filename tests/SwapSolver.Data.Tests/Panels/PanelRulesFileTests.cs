using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Loaves;

namespace SwapSolver.Data.Tests.Panels;

public sealed class PanelRulesFileTests
{
    private const string File = "labels/panel-rounding.json";

    [Fact]
    public void Every_line_has_a_rule_and_a_name_in_both_laws() =>
        Assert.All(TestPanels.Rules.ByBasis.Values, law => Assert.All(Enum.GetValues<PanelLine>(), line =>
        {
            Assert.NotEmpty(law.Rounding[line].Bands);
            Assert.NotEmpty(law.Words[line].Name);
        }));

    [Fact]
    public void Bands_follow_each_other_without_a_gap() =>
        Assert.All(TestPanels.Rules.ByBasis.Values.SelectMany(law => law.Rounding.Values.Append(law.Serving)), rule =>
        {
            Assert.True(double.IsPositiveInfinity(rule.Bands[^1].To.Value));
            Assert.All(rule.Bands.Zip(rule.Bands.Skip(1)), pair => Assert.Equal(pair.First.To, pair.Second.From));
            Assert.True(rule.Bands[0].From.Value <= rule.ZeroUpTo.Value);
        });

    [Fact]
    public void The_general_factors_are_those_of_the_law()
    {
        // Regulation (EU) No 1169/2011, Annex XIV, as quoted in the project notes on labels.
        var factors = TestPanels.Rules.Energy.KcalPerGram;
        Assert.Equal(
            (4d, 9d, 4d, 2d, 2.4, 3d, 7d),
            (Of(Fact.Protein), Of(Fact.Fat), Of(Fact.Carbohydrate), Of(Fact.Fibre), Of(Fact.Polyols), Of(Fact.OrganicAcid), Of(Fact.Alcohol)));
        Assert.Equal(0, TestPanels.Rules.Energy.KcalPerGramOfErythritol.Value);

        double Of(Fact fact) => factors[fact].Typical;
    }

    [Theory]
    [InlineData("\"low\": 8.3, \"typical\": 9,", "\"low\": 9.3, \"typical\": 9,", "\"fatGPer100G\": ^{ \"low\": 9.3", "stand in order")]
    [InlineData("\"erythritolKcalPerG\": { \"value\": 0,", "\"erythritolKcalPerG\": { \"value\": -1,", "\"erythritolKcalPerG\": { \"value\": ^-1", "between 0")]
    [InlineData("\"energyAllowancePercent\": { \"value\": 5,", "\"energyAllowancePercent\": { \"value\": 500,", "{ \"value\": ^500", "between 0 and 50")]
    [InlineData("\"sodiumMgPer100G\": 2.305", "\"sodiumMgPer100G\": 0.5", "\"sodiumMgPer100G\": ^0.5", "between 1")]
    [InlineData("\"name\": \"sugar alcohol\", \"zeroUpTo\": 0.5", "\"name\": \"sugar alcohol\", \"zeroUpTo\": -0.5", "\"zeroUpTo\": ^-0.5", "between 0")]
    [InlineData("\"name\": \"sugar alcohol\", ", "", "\"polyols\": ^{ \"zeroUpTo\"", "'name' is missing")]
    [InlineData("\"energyKcal\": { \"name\": \"energy\", \"zeroUpTo\": 5, \"bands\": [{ \"from\": 0, \"to\": 50, \"step\": 5 }", "\"energyKcal\": { \"name\": \"energy\", \"zeroUpTo\": 5, \"bands\": [{ \"from\": 0, \"to\": 50, \"step\": 0 }", "\"step\": ^0 }", "above 0")]
    [InlineData("\"energyKcal\": { \"name\": \"energy\", \"zeroUpTo\": 5, \"bands\": [{ \"from\": 0, \"to\": 50,", "\"energyKcal\": { \"name\": \"energy\", \"zeroUpTo\": 5, \"bands\": [{ \"from\": 60, \"to\": 50,", "\"to\": ^50, \"step\": 5", "cannot end at 50")]
    [InlineData("\"kilojoulesPerKcal\": {", "\"kilojoules\": {", "\"kilojoules\": ^{", "'kilojoules' is not known")]
    [InlineData("\"source\": \"panel-ash\"", "\"source\": \"hearsay\"", "\"source\": ^\"hearsay\"", "'hearsay' is not a key")]
    public void A_rule_that_cannot_be_true_is_shown_where_it_stands(string written, string spoilt, string place, string says)
    {
        using var folder = new SpoiltFolder();
        var text = folder.Replace(File, written, spoilt);

        Assert.Throws<DataFaultException>(folder.ReadPanelRules).AssertPointsAt(File, text, place, says);
    }

    [Fact]
    public void A_line_without_a_band_is_refused()
    {
        using var folder = new SpoiltFolder();
        var text = folder.Replace(File, "\"name\": \"sugar alcohol\", \"zeroUpTo\": 0.5, \"bands\": [{ \"from\": 0, \"step\": 1 }]", "\"name\": \"sugar alcohol\", \"zeroUpTo\": 0.5, \"bands\": []");

        Assert.Throws<DataFaultException>(folder.ReadPanelRules).AssertPointsAt(File, text, "\"bands\": ^[]", "at least one band");
    }
}
