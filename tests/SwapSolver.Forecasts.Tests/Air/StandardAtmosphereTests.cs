using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Forecasts.Tests;

public sealed class StandardAtmosphereTests
{
    /// <summary>How far a boiling point may lie from the printed one [°C].</summary>
    private const double BoilingTolerance = 0.2;

    private static readonly ReferenceTable Table = ReferenceTable.Read("Air/Reference/standard-atmosphere.csv");

    public static TheoryData<string> Rows => [.. Table.Names];

    [Theory]
    [MemberData(nameof(Rows))]
    public void Pressure_and_boiling_point_are_those_of_the_tables(string name)
    {
        var row = Table[name];
        var pressure = StandardAtmosphere.PressureAt(new Metres(row.Number("metres")));

        Assert.Equal(row.Number("pascals"), pressure.Value, row.Tolerance);
        Assert.Equal(row.Number("boils"), StandardAtmosphere.BoilingPointAt(pressure).Value, BoilingTolerance);
    }

    [Theory]
    [InlineData(-501)]
    [InlineData(6001)]
    [InlineData(double.NaN)]
    public void Where_no_kitchen_is_there_is_no_answer(double metres) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StandardAtmosphere.PressureAt(new Metres(metres)));

    [Fact]
    public void A_mole_of_gas_fills_22_4_litres_at_the_freezing_point() =>
        // Molar volume of an ideal gas at 0 °C and one atmosphere: 22.414 L; CODATA.
        Assert.Equal(22414, GasLaw.VolumeOf(new Millimoles(1000), new Celsius(0), Pascals.Atmosphere).Value, 1);
}
