using Spectre.Console;
using Spectre.Console.Rendering;

namespace SwapSolver.Console.Screens;

/// <summary>A table without lines: figures to the right, words to the left.</summary>
internal sealed class PlainTable
{
    private readonly Table table = new Table().NoBorder();

    /// <summary>Adds a column of words, which may wrap.</summary>
    public PlainTable Words(string head) => Column(head, Justify.Left, wraps: true);

    /// <summary>Adds a column of words that stay on one line.</summary>
    public PlainTable Marks(string head) => Column(head, Justify.Left, wraps: false);

    /// <summary>Adds a column of figures.</summary>
    public PlainTable Figures(string head) => Column(head, Justify.Right, wraps: false);

    /// <summary>Adds a row, one text a column.</summary>
    public void Row(params IEnumerable<string> cells) => Row(Style.Plain, cells);

    /// <summary>Adds a row whose last cell has a look of its own.</summary>
    public void Row(Style last, params IEnumerable<string> cells)
    {
        var texts = cells.ToArray();
        table.AddRow(texts.Select((text, place) => Cell(text, place == texts.Length - 1 ? last : Style.Plain)));
    }

    /// <summary>The table as it is drawn.</summary>
    public IRenderable ToRenderable() => table;

    private static Text Cell(string text, Style style) => new(CleanText.Of(text), style);

    private PlainTable Column(string head, Justify justify, bool wraps)
    {
        table.AddColumn(new TableColumn(new Text(head, Looks.ColumnHead))
        {
            Alignment = justify,
            NoWrap = !wraps,
            Padding = new Padding(0, 0, 2, 0),
        });
        return this;
    }
}
