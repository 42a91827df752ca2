using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Forecasts.Tests;

/// <summary>Printed values that the forecast does not meet, kept with the reason why they are not believed. Each reason that
/// can be shown is shown here; a row that the forecast comes to meet has no place here any more.</summary>
public sealed class ContestedSolutionTests
{
    private static readonly ReferenceTable Contested = ReferenceTable.Read("Acidity/Reference/contested.csv");

    private static readonly ReferenceTable Solutions = ReferenceTable.Read("Acidity/Reference/solutions.csv");

    public static TheoryData<string> Rows => [.. Contested.Names];

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_value_that_is_missed_is_missed_for_the_stated_reason(string name)
    {
        var row = Contested[name];
        var found = new ChargeBalance(Mixture.Of(row)).Solve().Ph;

        Assert.False(row.Agrees(found), $"met by now: {row.Against(found)}");
        Assert.InRange(Math.Abs(found - row.Published), row.Tolerance, 0.5);
        Assert.NotEmpty(row["why"]);
        switch (row["shown"])
        {
            case "ideal":
                Assert.True(row.Agrees(WithoutActivity(row)), $"without activity: {row.Against(WithoutActivity(row))}");
                break;
            case "table":
                Assert.Contains(Contested.Rows, other => other.Source == row.Source && IsStandard(other["shown"]));
                break;
            case var standard when IsStandard(standard):
                AssertContradicts(row, Solutions.Rows.Single(other => other["solution"] == standard));
                break;
            default:
                Assert.Equal("words", row["shown"]);
                break;
        }
    }

    [Fact]
    public void Few_values_are_contested() => Assert.True(3 * Contested.Rows.Length < Solutions.Rows.Length + ReferenceTable.Read("Acidity/Reference/buffer-tables.csv").Rows.Length);

    /// <summary>One composition to 3 %, sodium and potassium taken together, and two values: the standard's is the measured one.</summary>
    private static void AssertContradicts(ReferenceRow row, ReferenceRow standard)
    {
        var (parts, others) = (Mixture.Parts(row["composition"]), Mixture.Parts(standard["composition"]));
        double Alkali(Dictionary<string, double> of) => of.GetValueOrDefault("sodium") + of.GetValueOrDefault("potassium");

        Assert.Equal(1, Alkali(parts) / Alkali(others), 0.03);
        Assert.All(
            parts.Where(part => !Mixture.Chemistry.Ions.ContainsKey(part.Key)), part => Assert.Equal(1, part.Value / others[part.Key], 0.03));
        Assert.True(Math.Abs(row.Published - standard.Published) > row.Tolerance, "row and standard agree");
    }

    private static double WithoutActivity(ReferenceRow row)
    {
        var solution = Mixture.Of(row);
        var none = new Figure(new Range(0, 0, 0), "memory", Mark.Memory, null);
        return new ChargeBalance(solution with { Constants = solution.Constants with { DaviesSlope = none } }).Solve().Ph;
    }

    private static bool IsStandard(string shown) => shown is not ("ideal" or "table" or "words");
}
