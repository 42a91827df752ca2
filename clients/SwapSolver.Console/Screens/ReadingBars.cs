using Spectre.Console;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>The readings of a formula, each as a bar against its band with its figures.</summary>
internal static class ReadingBars
{
    /// <summary>Shows the readings, then what a baker would notice of those outside.</summary>
    public static void Show(Screen screen, IReadOnlyCollection<Reading> readings, string title = "Readings", string key = ReadingBar.Key)
    {
        if (readings.Count == 0)
        {
            return;
        }

        screen.Part(title);
        if (screen.IsNarrow)
        {
            Sentences(screen, readings);
        }
        else
        {
            screen.Table(Table(readings));
            screen.Item(key);
        }

        foreach (var reading in readings.Where(reading => reading.Meaning.Length > 0))
        {
            screen.Item($"{ReadingTitle.Of(reading)}, {new ReadingText(reading).Standing}: {reading.Meaning}");
        }
    }

    /// <summary>Whether a reading is worth a line: a mass that kept its room tells a baker nothing that the bowl does
    /// not, and is left to <c>--json</c>.</summary>
    public static bool TellsSomething(Reading reading) =>
        reading.Standing != Reading.Types.Standing.Inside || !reading.Balance.EndsWith("-mass", StringComparison.Ordinal);

    private static void Sentences(Screen screen, IEnumerable<Reading> readings)
    {
        foreach (var reading in readings)
        {
            var text = new ReadingText(reading);
            var standing = text.Standing.Length > 0 ? $": {text.Standing}" : "";
            screen.Item($"{ReadingTitle.WithUnit(reading)}: {text.Value}, {text.Band}{standing}");
        }
    }

    private static PlainTable Table(IEnumerable<Reading> readings)
    {
        var table = new PlainTable().Words("reading").Marks("").Figures("value").Figures("band").Marks("");
        foreach (var reading in readings)
        {
            var text = new ReadingText(reading);
            table.Row(Look(reading.Standing), ReadingTitle.WithUnit(reading), ReadingBar.Draw(reading), text.Value, text.Band, text.Standing);
        }

        return table;
    }

    private static Style Look(Reading.Types.Standing standing) => standing switch
    {
        Reading.Types.Standing.Inside => Looks.Good,
        Reading.Types.Standing.Below or Reading.Types.Standing.Above => Looks.Warning,
        _ => Style.Plain,
    };
}
