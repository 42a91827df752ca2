using Spectre.Console;
using Spectre.Console.Rendering;

namespace SwapSolver.Console.Screens;

/// <summary>The page that an answer is written on, part by part.</summary>
internal sealed class Screen : IDisposable
{
    private const int Indent = 2;

    // Below this a table's words would be broken into syllables.
    private const int NarrowestTable = 76;

    private readonly StringWriter paper = new();
    private readonly IAnsiConsole console;
    private readonly Terminal terminal;
    private bool isStarted;

    /// <summary>Opens an empty page for a terminal.</summary>
    public Screen(Terminal terminal)
    {
        this.terminal = terminal;
        console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = terminal.Colour ? AnsiSupport.Yes : AnsiSupport.No,
            ColorSystem = terminal.Colour ? ColorSystemSupport.Standard : ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(paper),
        });
        console.Profile.Width = terminal.Width;
    }

    /// <summary>Whether wide tables must give way to sentences.</summary>
    public bool IsNarrow => terminal.Width < NarrowestTable;

    /// <summary>Writes what opens a new answer.</summary>
    public void Heading(string text)
    {
        Gap();
        Write(text, Looks.Heading);
    }

    /// <summary>Writes what opens a part of an answer.</summary>
    public void Part(string text)
    {
        Gap();
        Write(text, Looks.Part);
    }

    /// <summary>Writes a sentence, wrapped to the width.</summary>
    public void Sentence(string text) => Write(text, Style.Plain);

    /// <summary>Writes a sentence that belongs to the part above, set in as its tables are.</summary>
    public void Item(string text) => Draw(SetIn(new Text(CleanText.Of(text))));

    /// <summary>Writes a sentence that must not be overlooked.</summary>
    public void Warning(string text) => Write(text, Looks.Warning);

    /// <summary>Writes a text that is no sentence, as it is.</summary>
    public void Verbatim(string text)
    {
        isStarted = true;
        paper.Write(text);
    }

    /// <summary>Writes a table.</summary>
    public void Table(PlainTable table) => Draw(SetIn(table.ToRenderable()));

    /// <summary>Leaves a line free, save at the top.</summary>
    public void Gap()
    {
        if (isStarted)
        {
            paper.WriteLine();
        }
    }

    /// <summary>The page as text, without spaces at the ends of lines.</summary>
    public override string ToString() =>
        string.Join(Environment.NewLine, paper.ToString().Split('\n').Select(line => line.TrimEnd('\r').TrimEnd(' ')));

    /// <inheritdoc/>
    public void Dispose() => paper.Dispose();

    private static Padder SetIn(IRenderable part) => new(part, new Padding(Indent, 0, 0, 0));

    private void Write(string text, Style style)
    {
        Draw(new Text(CleanText.Of(text), style));
        paper.WriteLine();
    }

    private void Draw(IRenderable part)
    {
        isStarted = true;
        if (terminal.Colour)
        {
            console.Write(part);
            return;
        }

        // Without colour the library would set the colours of the real terminal instead of writing codes.
        foreach (var segment in part.GetSegments(console))
        {
            paper.Write(segment.Text);
        }
    }
}
