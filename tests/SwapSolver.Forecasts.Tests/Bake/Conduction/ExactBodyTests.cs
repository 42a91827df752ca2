using SwapSolver.Loaves;

namespace SwapSolver.Forecasts.Tests;

/// <summary>The judge is judged first: by the table of one-term coefficients that textbooks print.</summary>
public sealed class ExactBodyTests
{
    private static readonly ReferenceTable Table = ReferenceTable.Read("Bake/Reference/one-term-coefficients.csv");

    public static TheoryData<string> Rows => [.. Table.Names];

    [Theory]
    [MemberData(nameof(Rows))]
    public void One_term_coefficients_are_those_of_the_textbook(string name)
    {
        var row = Table[name];
        foreach (var kind in Enum.GetValues<BodyKind>())
        {
            var body = new ExactBody(kind, row["biot"] == "inf" ? double.PositiveInfinity : row.Number("biot"));
            var column = kind.ToString().ToLowerInvariant();
            // Half a unit of the last printed place is the print's own rounding.
            Assert.Equal(row.Number($"{column}Zeta"), body.Zeta, row.Tolerance);
            Assert.Equal(row.Number($"{column}C"), body.Coefficient, row.Tolerance);
        }
    }

    [Fact]
    public void A_steel_shaft_of_a_textbook_cools_as_printed()
    {
        // Cengel, long steel shaft: radius 0.175 m, 400 to 150 °C, h 60, k 14.9, diffusivity 3.95e-6, 20 min. Biot 0.705, zeta 1.0904,
        // A 1.1548, Fourier 0.1548; printed answer 390 °C, which is the one-term answer; the whole series gives 385.7.
        var shaft = new ExactBody(BodyKind.Cylinder, 60 * 0.175 / 14.9);
        var fourier = 3.95e-6 * 1200 / (0.175 * 0.175);

        Assert.Equal(1.0904, shaft.Zeta, 2e-4);
        Assert.Equal(1.1548, shaft.Coefficient, 2e-4);
        Assert.Equal(390, 150 + (250 * shaft.MiddleByOneTerm(fourier)), 0.5);
        Assert.Equal(385.7, 150 + (250 * shaft.Middle(fourier)), 0.1);
    }
}
