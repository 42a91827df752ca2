using System.Globalization;
using SwapSolver.Solving.Models;

namespace SwapSolver.Solving.Tests.Models;

/// <summary>Free MPS: fields apart by blanks, sections ROWS, COLUMNS, RHS, RANGES, BOUNDS, ENDATA; N marks the objective,
/// G, L and E a floor, a ceiling and an equality; a range on a G row reaches up from its right side (rules as in the
/// GLPK reference manual, appendix on MPS formats; from memory).</summary>
public sealed class MpsTextTests
{
    private const double Open = double.PositiveInfinity;

    [Fact]
    public void A_bowl_of_three_is_written_line_by_line()
    {
        var model = new Model(
            [new("water", 10, 250.5, false, 0.1), new("eggs", 0, 5, true, 2), new("drift", -Open, Open, false, 0)],
            [
                new("floor", [new(0, 1), new(1, 50)], 200, Open),
                new("ceiling", [new(0, 1)], -Open, 240),
                new("between", [new(1, 3), new(2, -1)], -2, 7.5),
                new("equal", [new(0, 1), new(2, 1)], 0, 0),
                new("open", [new(2, 1)], -Open, Open),
            ]);
        const string expected = """
            NAME swapsolver FREE
            ROWS
             N cost
             G floor
             L ceiling
             G between
             E equal
             N open
            COLUMNS
             water cost 0.1
             water floor 1
             water ceiling 1
             water equal 1
             marker1 'MARKER' 'INTORG'
             eggs cost 2
             eggs floor 50
             eggs between 3
             marker2 'MARKER' 'INTEND'
             drift between -1
             drift equal 1
             drift open 1
            RHS
             rhs floor 200
             rhs ceiling 240
             rhs between -2
            RANGES
             rng between 9.5
            BOUNDS
             LO bnd water 10
             UP bnd water 250.5
             LO bnd eggs 0
             UP bnd eggs 5
             MI bnd drift
             PL bnd drift
            ENDATA

            """;
        Assert.Equal(expected.ReplaceLineEndings("\n"), MpsText.Of(model));
    }

    [Fact]
    public void A_whole_column_at_the_end_closes_its_marker()
    {
        var text = MpsText.Of(new Model([new("eggs", 0, 5, true, 2)], [new("two", [new(0, 1)], 2, Open)]));
        Assert.EndsWith(
            " marker0 'MARKER' 'INTORG'\n eggs cost 2\n eggs two 1\n markerend 'MARKER' 'INTEND'\nRHS\n rhs two 2\nRANGES\nBOUNDS\n LO bnd eggs 0\n UP bnd eggs 5\nENDATA\n",
            text,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_column_that_is_in_no_row_is_written_all_the_same()
    {
        // A bound on a column that COLUMNS does not name is refused by every reader of the format.
        var text = MpsText.Of(new Model([new("spare", 0, 1, false, 0)], []));
        var columns = text[text.IndexOf("COLUMNS", StringComparison.Ordinal)..text.IndexOf("RHS", StringComparison.Ordinal)];
        Assert.Contains(" spare ", columns, StringComparison.Ordinal);
    }

    [Fact]
    public void Numbers_keep_every_digit_and_a_point_for_a_comma_country()
    {
        var third = 1.0 / 3;
        var before = CultureInfo.CurrentCulture;
        try
        {
            var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            comma.NumberFormat.NumberDecimalSeparator = ",";
            CultureInfo.CurrentCulture = comma;
            var text = MpsText.Of(new Model([new("x", 0, 1, false, third)], []));
            var printed = text.Split('\n').Single(line => line.StartsWith(" x cost ", StringComparison.Ordinal))[" x cost ".Length..];
            Assert.Equal(third, double.Parse(printed, CultureInfo.InvariantCulture));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
