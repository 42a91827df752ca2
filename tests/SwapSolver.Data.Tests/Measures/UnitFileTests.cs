using SwapSolver.Kitchen.Measures;
using SwapSolver.Loaves;

namespace SwapSolver.Data.Tests.Measures;

public sealed class UnitFileTests
{
    private static readonly ReferenceTable Units = ReferenceTable.Read("Measures/Reference/units.csv");

    private static readonly Dictionary<string, MeasureSystem> Systems = new()
    {
        ["US_CUSTOMARY"] = MeasureSystem.UsCustomary,
        ["US_LABELLING"] = MeasureSystem.UsLabelling,
        ["METRIC"] = MeasureSystem.Metric,
        ["AUSTRALIAN"] = MeasureSystem.Australian,
        ["UK_IMPERIAL"] = MeasureSystem.UkImperial,
    };

    public static TheoryData<int> Rows => [.. Enumerable.Range(0, Units.Rows.Length)];

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_cup_or_spoon_holds_what_the_standard_says(int place)
    {
        var row = Units.Rows[place];
        var size = ShippedMeasures.Unit(row["unit"]) switch
        {
            VolumeUnit volume => volume.In(Systems[row["system"]])!.Value.Value,
            MassUnit mass => mass.In(Systems[row["system"]]).Value,
            var other => throw new InvalidOperationException(other.Id),
        };
        Assert.True(row.Agrees(size), row.Against(size));
    }

    [Fact]
    public void Sixteen_tablespoons_and_forty_eight_teaspoons_fill_a_US_cup()
    {
        double Of(string name) => ((VolumeUnit)ShippedMeasures.Unit(name)).In(MeasureSystem.UsCustomary)!.Value.Value;
        Assert.Equal(Of("cup"), 16 * Of("tbsp"), 1e-9);
        Assert.Equal(Of("cup"), 48 * Of("tsp"), 1e-9);
        Assert.Equal(Of("gallon"), 16 * Of("cup"), 1e-9);
    }

    [Fact]
    public void No_system_but_the_imperial_and_the_customary_knows_a_pint() =>
        Assert.Null(((VolumeUnit)ShippedMeasures.Unit("pint")).In(MeasureSystem.Metric));
}
