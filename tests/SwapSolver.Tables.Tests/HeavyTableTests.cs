using System.Diagnostics;

namespace SwapSolver.Tables.Tests;

/// <summary>The longest piece that is read, made as unkind as can be.</summary>
public sealed class HeavyTableTests
{
    /// <summary>No acceptance names a time for so long a text; a client's patience does, and what grows with the square of
    /// the length would take minutes.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    private const string Row = "x,6,414,20,10,3,61\n";

    [Theory]
    [InlineData("sound rows", "12006,\"Seeds, chia seeds, dried\",5.80,486,16.54,30.74,4.80,42.12,34.4,,631,7.72,335,860,407,16,3.330,2.309,23.665,0\n")]
    [InlineData("quotes", "\"")]
    [InlineData("quotes that open lines", "\"a,b\n")]
    [InlineData("quotes that close lines", "a,b\"\n")]
    [InlineData("doubled quotes", "\"\"\n")]
    [InlineData("threefold quotes", "\"\"\"\n")]
    [InlineData("commas", ",")]
    [InlineData("line ends", "\n")]
    [InlineData("short rows", "a\n")]
    [InlineData("rows of one id", Row)]
    [InlineData("words that nobody knows", "12006,x,6,414,20,10,3,61,,,,,,,,,,,,\n")]
    [InlineData("one letter", "a")]
    [InlineData("carets", "^")]
    [InlineData("tildes", "~\n")]
    public void A_full_piece_is_read_without_a_wait(string what, string part)
    {
        var text = string.Concat(Enumerable.Repeat(part, FoodTable.MostLetters / part.Length));
        foreach (var format in new TableFormat?[] { null, TableFormat.Foods, TableFormat.UsdaAbbreviated, TableFormat.HouseholdWeights })
        {
            foreach (var header in new[] { TestTables.Header, null })
            {
                var start = Stopwatch.GetTimestamp();
                TestTables.Reader.Read(new TableSlice(text, header, 2, format));
                var took = Stopwatch.GetElapsedTime(start);
                Assert.True(took < Patience, $"{what} as {format}: {took}");
            }
        }
    }
}
