using CsCheck;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Labels;

public sealed class RoundedAmountTests
{
    private static readonly ReferenceTable Rounded = ReferenceTable.Read("Labels/Reference/rounded.csv");

    public static TheoryData<string> Rows => [.. Rounded.Names];

    [Theory]
    [MemberData(nameof(Rows))]
    public void An_amount_is_printed_as_the_law_prints_it(string name)
    {
        var row = Rounded[name];
        var law = TestLabels.Law(row["law"]);

        var printed = law.Write(TestLabels.Line(law.Id, row["nutrient"]).Rounding.Print(new PanelAmount(row.Number("amount"))));

        Assert.True(row["printed"] == printed, $"{printed} against {row.Name} '{row.Text}' ({row.Mark}: {row.Source})");
    }

    [Fact]
    public void Every_line_of_every_law_prints_no_amount_farther_off_than_a_step() =>
        Gen.Select(Gen.Int[0, 1000], Gen.Double[-3, 3.5]).Sample((pick, size) =>
        {
            var lines = TestLabels.Laws.All.SelectMany(law => law.Lines).ToList();
            var (line, amount) = (lines[pick % lines.Count], Math.Pow(10, size));
            var printed = line.Rounding.Print(new PanelAmount(amount));
            var step = line.Rounding.Bands.Last(band => band.From.Value <= amount || band == line.Rounding.Bands[0]).Step.Value;
            var floor = line.Rounding.Small.Select(small => small.End.Value).DefaultIfEmpty(0).Max();
            Assert.True(
                printed.IsLessThan ? amount <= Math.Max(printed.Value.Value, floor) : Math.Abs(printed.Value.Value - amount) <= Math.Max(step / 2, floor) + 1e-9,
                $"{line.Id} {amount} prints {printed}");
        });

    /// <summary>The reader of panels and the printer of labels go by one rule: what is printed is read as what it was.</summary>
    [Fact]
    public void What_a_label_prints_is_read_back_as_an_interval_that_holds_the_amount() =>
        Gen.Select(Gen.Bool, Gen.Int[0, 100], Gen.Double[-3, 3]).Sample((american, pick, size) =>
        {
            var basis = american ? PanelBasis.UnitedStates : PanelBasis.EuropeanUnion;
            var lines = TestLabels.Law(american ? "us" : "eu").Lines.Where(line => Enum.IsDefined(typeof(PanelLine), line.Nutrient.ToString())).ToList();
            var line = lines[pick % lines.Count];
            var amount = Math.Pow(10, size);
            var printed = line.Rounding.Print(new PanelAmount(amount));
            var range = TestPanels.Rules.IntervalOf(basis, Enum.Parse<PanelLine>(line.Nutrient.ToString()), printed);
            Assert.True(amount >= range.Low - 1e-9 && amount <= range.High + 1e-9, $"{basis} {line.Id} {amount} prints {printed}, read as {range}");
        });

    [Theory]
    [InlineData("us", "fat")]
    [InlineData("eu", "salt")]
    public void Nothing_is_printed_as_nothing(string law, string nutrient) =>
        Assert.Equal("0", TestLabels.Line(law, nutrient).Rounding.Print(new PanelAmount(0)).Text);

    [Fact]
    public void A_half_that_a_sum_of_fractions_misses_by_its_last_bit_still_goes_up() =>
        // 0.1 + 0.2 + 0.45 is 0.75 and, in doubles, a hair more; 4.35 - 3.6 is a hair less.
        Assert.Equal("1", TestLabels.Line("us", "fat").Rounding.Print(new PanelAmount(4.35 - 3.6)).Text);
}
