namespace SwapSolver.Tables.Tests;

/// <summary>A table may come in pieces: cut at line ends with an even number of quotes before them.</summary>
public sealed class SliceTests
{
    private static readonly string[] Lines =
        [.. TestTables.Usda.Rows.Select(row => row["ndb_no"] == "12061" ? row.Text.Replace("Nuts, almonds", "Nuts,\nalmonds", StringComparison.Ordinal) : row.Text)];

    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(50)]
    [InlineData(1000)]
    public void Pieces_say_what_the_whole_says(int size)
    {
        var whole = TestTables.Read([TestTables.Header, .. Lines]);
        var next = 2;
        var pieces = new List<TableReading>();
        foreach (var piece in Lines.Chunk(size))
        {
            var text = string.Join('\n', piece) + "\n";
            pieces.Add(TestTables.Reader.Read(new TableSlice(text, TestTables.Header, next)));
            next += text.Count(letter => letter == '\n');
        }

        Assert.Equal(whole.Rows.Select(row => (row.Line, Fingerprint.Of(row.Food))), pieces.SelectMany(piece => piece.Rows).Select(row => (row.Line, Fingerprint.Of(row.Food))));
        Assert.Equal(whole.Problems.AsEnumerable(), pieces.SelectMany(piece => piece.Problems));
        Assert.Equal(whole.LeftOut, pieces.Sum(piece => piece.LeftOut));
        Assert.Contains(whole.Foods, food => food.Name == "Nuts, almonds");
    }

    [Fact]
    public void Pieces_of_the_abbreviated_file_need_no_header()
    {
        var reading = TestTables.Reader.Read(new TableSlice("~12345~^~X~", Header: null, FirstLine: 8000, TableFormat.UsdaAbbreviated));

        Assert.Equal(8000, Assert.Single(reading.Problems).Line);
    }
}
