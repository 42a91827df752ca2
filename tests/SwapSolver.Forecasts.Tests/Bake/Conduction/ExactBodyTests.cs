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
            ReferenceLedger.Note(row, $"{column}Zeta", row.Number($"{column}Zeta"), body.Zeta, row.Tolerance);
            ReferenceLedger.Note(row, $"{column}C", row.Number($"{column}C"), body.Coefficient, row.Tolerance);
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

    [Theory]
    // Reference notes on bakes, section 2.3: the middle at Fourier 0.05, 0.1, 0.2, 0.5 and 1, by a series coded apart; calculated.
    // The rows that the notes head as infinite were worked out at a Biot number of 100,000, as their last digits show: 4/pi exp(-pi²/4) is .107977.
    [InlineData(nameof(BodyKind.Slab), 1, .999751, .993108, .950642, .772526, .533859)]
    [InlineData(nameof(BodyKind.Slab), 5, .999046, .977309, .864881, .523109, .220721)]
    [InlineData(nameof(BodyKind.Slab), 1e5, .996870, .949308, .772319, .370787, .107982)]
    [InlineData(nameof(BodyKind.Cylinder), 1, .998898, .976817, .870174, .548586, .249380)]
    [InlineData(nameof(BodyKind.Cylinder), 5, .995845, .926486, .671418, .207554, .028668)]
    [InlineData(nameof(BodyKind.Cylinder), 1e5, .987101, .848362, .501498, .088895, .004933)]
    [InlineData(nameof(BodyKind.Sphere), 1, .996869, .949305, .772312, .370777, .107977)]
    [InlineData(nameof(BodyKind.Sphere), 5, .988399, .845873, .472248, .065675, .002414)]
    [InlineData(nameof(BodyKind.Sphere), 1e5, .966002, .707112, .277088, .014385, .000103)]
    public void The_middle_is_as_warm_as_worked_out_apart(string kind, double biot, params double[] thetas)
    {
        var body = new ExactBody(Enum.Parse<BodyKind>(kind), biot);
        Assert.All(thetas.Zip([0.05, 0.1, 0.2, 0.5, 1.0]), pair => Assert.Equal(pair.First, body.Middle(pair.Second), 2e-6));
    }

    [Theory]
    // Eggs of textbook problems: diameter [m], k, diffusivity, h, from, to and water [°C], printed minutes. 18.3 as copied online; 17.8
    // and 14.4 by the same author's manual and example, from memory. To 1 %: the prints read their coefficients from a table.
    [InlineData(0.055, 0.607, 1.46e-7, 800, 4.3, 74, 100, 18.3)]
    [InlineData(0.055, 0.6, 1.4e-7, 1400, 8, 70, 97, 17.8)]
    [InlineData(0.05, 0.627, 1.51e-7, 1200, 5, 70, 95, 14.4)]
    public void An_egg_of_a_textbook_boils_as_printed(double diameter, double k, double diffusivity, double h, double from, double to, double water, double minutes)
    {
        var radius = diameter / 2;
        var exact = new ExactBody(BodyKind.Sphere, h * radius / k).FourierAt((to - water) / (from - water)) * radius * radius / diffusivity / 60;
        Assert.InRange(exact / minutes, 0.99, 1.01);

        var flow = new HeatFlow(OneWay.Cut(BodyKind.Sphere, radius, 40), OneWay.Stuff(k, k / diffusivity), from);
        var found = flow.Until(Surroundings.Plain(water, h), () => flow.Coldest, to, 7200) / 60;
        Assert.InRange(found!.Value / minutes, 0.99, 1.01);
    }
}
