using System.Globalization;
using System.Text.RegularExpressions;
using SwapSolver.Kitchen.Acids;
using SwapSolver.Loaves;

namespace SwapSolver.Data.Tests.Acids;

/// <summary>Molar masses against the atomic masses of their formulas.</summary>
public sealed partial class MolarMassTests
{
    private static readonly ReferenceTable Elements = ReferenceTable.Read("Acids/Reference/atomic-masses.csv");

    public static TheoryData<string> Substances => [.. Pure.Keys.Order(StringComparer.Ordinal)];

    private static Dictionary<string, PureSubstance> Pure => ShippedAcids.Chemistry.Leaveners.Values
        .Select(leavener => (leavener.Id, Substance: leavener switch
        {
            PureAcid acid => acid.Substance,
            Bicarbonate bicarbonate => bicarbonate.Substance,
            _ => null,
        }))
        .Where(pair => pair.Substance is not null)
        .ToDictionary(pair => pair.Id, pair => pair.Substance!);

    [Theory]
    [MemberData(nameof(Substances))]
    public void The_molar_mass_is_the_sum_of_its_atoms(string id)
    {
        var substance = Pure[id];

        Assert.Equal(MassOf(substance.Formula), substance.GramsPerMole.Range.Typical, 0.011);
    }

    [Fact]
    public void Soda_and_carbon_dioxide_weigh_what_their_atoms_weigh()
    {
        Assert.Equal(MassOf("NaHCO3"), ShippedAcids.Chemistry.Constants.SodaGramsPerMole.Range.Typical, 0.001);
        Assert.Equal(MassOf("CO2"), ShippedAcids.Chemistry.Constants.CarbonDioxideGramsPerMole.Range.Typical, 0.001);
        Assert.Equal(ShippedAcids.Chemistry.Constants.SodaGramsPerMole.Range.Typical, Pure["baking-soda"].GramsPerMole.Range.Typical);
    }

    /// <summary>Mass of a formula [g/mol]; what follows a full stop may begin with how often it is there, as in CaHPO4.2H2O.</summary>
    private static double MassOf(string formula) => formula.Split('.').Sum(part =>
        CountOf(Times().Match(part).Value) * Atom().Matches(part).Sum(match =>
            Elements.Rows.Single(row => row["element"] == match.Groups[1].Value).Published * CountOf(match.Groups[2].Value)));

    private static int CountOf(string digits) => digits.Length == 0 ? 1 : int.Parse(digits, CultureInfo.InvariantCulture);

    [GeneratedRegex("^[0-9]*")]
    private static partial Regex Times();

    [GeneratedRegex("([A-Z][a-z]?)([0-9]*)")]
    private static partial Regex Atom();
}
