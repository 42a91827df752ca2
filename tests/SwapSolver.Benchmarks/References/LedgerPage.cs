using System.Globalization;
using System.Text;

namespace SwapSolver.Benchmarks.References;

/// <summary>Writes <c>tests/REFERENCES.md</c> from what the tests noted while they ran and from what <c>data/</c> marks as an estimate.</summary>
internal static class LedgerPage
{
    private const string Page = "tests/REFERENCES.md";

    private static readonly string[] Marks = ["published", "calculated", "practice", "memory"];

    /// <summary>Writes the page, from the root of the sources.</summary>
    /// <param name="folder">Where the tests noted what they compared.</param>
    public static int Write(string folder)
    {
        var checks = Directory.GetFiles(folder, "*.tsv")
            .SelectMany(File.ReadAllLines)
            .Select(LedgerLine.Of)
            .DistinctBy(line => (line.Row, line.What))
            .OrderBy(line => line.Area, StringComparer.Ordinal)
            .ThenBy(line => line.Table, StringComparer.Ordinal)
            .ThenBy(line => line.Line)
            .ThenBy(line => line.What, StringComparer.Ordinal)
            .ToList();
        if (checks.Count == 0)
        {
            System.Console.Error.WriteLine($"the tests noted nothing in '{folder}': run tests/references.sh");
            return 1;
        }

        var estimates = Estimate.All("data");
        var page = new StringBuilder();
        page.AppendLine("# Figures that the tests hold the code against\n");
        page.AppendLine("Written by `bash tests/references.sh`, which runs the tests and collects what they compare: every figure with its source, its tolerance and the code's value. "
            + "Tables whose rows are words (lines of recipes, questions, allergen lists) are checked too and stand in their `Reference` folders; the bibliography is `data/sources.json`.\n");
        page.AppendLine("| area | " + string.Join(" | ", Marks) + " |\n| --- | " + string.Join(" | ", Marks.Select(_ => "---:")) + " |");
        foreach (var area in checks.GroupBy(line => line.Area))
        {
            page.AppendLine(Row([area.Key, .. Marks.Select(mark => Text(area.Count(line => line.Mark == mark)))]));
        }

        page.AppendLine(Row(["all", .. Marks.Select(mark => Text(checks.Count(line => line.Mark == mark)))]));
        page.AppendLine($"\nEstimates in `data/`: {Text(estimates.Sum(one => one.Figures.Count))} figures for {Text(estimates.Count)} reasons, at the end.");
        foreach (var table in checks.GroupBy(line => (line.Area, line.Table)))
        {
            page.AppendLine($"\n## {table.Key.Area}: {table.Key.Table}\n");
            foreach (var source in table.GroupBy(line => (line.Source, line.Mark)))
            {
                page.AppendLine($"{source.Key.Source} ({source.Key.Mark})\n");
                page.AppendLine("| row | what | printed | tolerance | the code's |\n| --- | --- | ---: | ---: | ---: |");
                foreach (var line in source)
                {
                    page.AppendLine(Row([Text(line.Line), line.What.Length > 0 ? line.What : line.Said, line.Printed, line.Tolerance, line.Found]));
                }

                page.AppendLine();
            }
        }

        page.AppendLine("## Estimates in `data/`, each with its reason\n");
        foreach (var one in estimates)
        {
            page.AppendLine($"- **{one.Source}** ({string.Join(", ", one.Marks)}), {one.Reason}: {string.Join("; ", one.Figures)}");
        }

        File.WriteAllText(Page, page.ToString().ReplaceLineEndings("\n"));
        System.Console.WriteLine($"{Page}: {checks.Count(line => line.Mark == "published")} published figures checked, {checks.Count} in all");
        return 0;
    }

    private static string Row(IEnumerable<string> cells) => $"| {string.Join(" | ", cells.Select(cell => cell.Replace("|", "\\|", StringComparison.Ordinal)))} |";

    private static string Text(int count) => count.ToString(CultureInfo.InvariantCulture);
}
