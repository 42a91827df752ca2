using SwapSolver.Data.Files;
using SwapSolver.Data.Forecasts;
using SwapSolver.Kitchen.Acids;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Data.Tests.Acids;

public sealed class LeaveningBlendTests
{
    private static LeaveningChemistry Chemistry => ShippedAcids.Chemistry;

    public static TheoryData<string> Powders => [.. Chemistry.Leaveners.Values.OfType<LeaveningBlend>().Select(blend => blend.Id).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Powders))]
    public void The_parts_of_a_powder_hold_the_acid_and_the_base_of_its_facts(string id)
    {
        var blend = Assert.IsType<LeaveningBlend>(Chemistry.Leaveners[id]);
        var powder = TestKitchen.Ingredient(id);
        var soda = Chemistry.Constants.SodaGramsPerMole;
        var acid = blend.Parts.Sum(part => part.Of is PureAcid of ? part.Percent.Range.Typical / 100 * of.Counted(soda).Value * 10 / soda.Range.Typical : 0);
        var bicarbonate = blend.Parts.Sum(part => part.Of is Bicarbonate of ? part.Percent.Range.Typical * 10 / of.Substance.GramsPerMole.Range.Typical : 0);

        // The shares were worked back from the facts and are printed to a tenth of a percent.
        Assert.Equal(powder.Typical[Fact.Acid], acid, 0.02 * acid);
        Assert.Equal(powder.Typical[Fact.Base], bicarbonate, 0.02 * bicarbonate);
    }

    [Theory]
    [InlineData("baking-powder-double-acting", 16.1)]
    [InlineData("baking-powder-phosphate", 15.1)]
    [InlineData("baking-powder-low-sodium", 11.4)]
    public void A_powder_yields_the_gas_of_its_soda(string id, double percent)
    {
        // Worked back from sodium, potassium and phosphorus of USDA SR 26 rows 18369 to 18371, x 44.009 g/mol.
        var available = LeaveningBlend.AvailableCarbonDioxide(TestKitchen.Ingredient(id).Typical, Chemistry.Constants.CarbonDioxideGramsPerMole);

        Assert.Equal(percent, available.Value, 0.1);
    }

    [Fact]
    public void Law_asks_twelve_percent_in_the_United_States_and_ten_in_Canada()
    {
        // Trade dictionary of baking ('Federal standards'); Canada, Food and Drug Regulations B.03.002.
        var floors = ForecastFiles.ReadRise(TestKitchen.Folder, SourceKeys.Read(TestKitchen.Folder)).PowderFloors;

        Assert.Equal([("United States", 12.0), ("Canada", 10.0)], floors.Select(floor => (floor.Where, floor.Least.Value)));
    }
}
