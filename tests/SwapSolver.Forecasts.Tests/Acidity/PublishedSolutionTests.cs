using SwapSolver.Loaves;

namespace SwapSolver.Forecasts.Tests;

/// <summary>Solutions and buffers whose pH others have measured or printed.</summary>
public sealed class PublishedSolutionTests
{
    private static readonly ReferenceTable Solutions = ReferenceTable.Read("Acidity/Reference/solutions.csv");

    private static readonly ReferenceTable Buffers = ReferenceTable.Read("Acidity/Reference/buffer-tables.csv");

    public static TheoryData<string> SolutionRows => [.. Solutions.Names];

    public static TheoryData<string> BufferRows => [.. Buffers.Names];

    [Theory]
    [MemberData(nameof(SolutionRows))]
    public void A_solution_reads_as_published(string name)
    {
        var row = Solutions[name];
        var found = new ChargeBalance(Mixture.Of(row)).Solve();

        Assert.True(row.Agrees(found.Ph), row.Against(found.Ph));
        Assert.Equal(0, found.Residual, 1e-9);
    }

    [Theory]
    [MemberData(nameof(BufferRows))]
    public void A_buffer_mixed_by_a_table_reads_as_the_table_says(string name)
    {
        var row = Buffers[name];
        var parts = new Dictionary<string, double>();
        foreach (var stock in new[] { "A", "B" })
        {
            foreach (var (part, strength) in Mixture.Parts(row[$"stock{stock}"]))
            {
                parts[part] = parts.GetValueOrDefault(part) + (strength * row.Number($"ml{stock}") / row.Number("total"));
            }
        }

        var found = new ChargeBalance(Mixture.Of(parts)).Solve();

        Assert.True(row.Agrees(found.Ph - row.Number("scale")), row.Against(found.Ph - row.Number("scale")));
    }

    [Fact]
    public void The_equimolal_phosphate_buffer_reads_far_below_the_pKa_of_its_acid()
    {
        // pKa 7.20, pH 6.865: without activity coefficients the forecast would be a third of a unit off.
        var row = Solutions.Rows.Single(row => row["solution"] == "equimolal phosphate");
        var found = new ChargeBalance(Mixture.Of(Mixture.Parts(row["composition"]))).Solve();

        Assert.InRange(found.Ph, 6.8, 6.95);
    }

    [Fact]
    public void More_cream_of_tartar_than_dissolves_does_not_make_the_water_more_sour()
    {
        // 0.0341 mol/kg dissolve at 25 C (NIST standard, memory); the rest lies on the bottom.
        var little = new ChargeBalance(Mixture.Of(Mixture.Parts("potassium=0.05;tartaric=0.05"))).Solve();
        var much = new ChargeBalance(Mixture.Of(Mixture.Parts("potassium=0.5;tartaric=0.5"))).Solve();

        Assert.Equal(little.Ph, much.Ph, 0.001);
        Assert.Equal(0.05 - 0.0341, little.SolidBitartrate, 0.0005);
        Assert.Equal(0.5 - 0.0341, much.SolidBitartrate, 0.0005);
    }
}
