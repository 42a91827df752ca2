using System.Globalization;
using System.Text;

namespace SwapSolver.Benchmarks.Load;

/// <summary>The page of results: each run writes its own section anew and leaves the others.</summary>
internal static class LoadPage
{
    private const string Page = "tests/SwapSolver.Benchmarks/results/load.md";

    private const string Head = "# Under load\n\nWritten by the benchmarks' `--fuzz`, `--overload`, `--deadlines`, `--stalled`, `--throughput`, `--first-answer`, `--pages`, `--bake`, `--any-text` and `--soak`, run from the root of the sources; the service is a process of its own on loopback, the callers run beside it on the same processors.\n";

    /// <summary>Writes a section, and says whether its promise was kept.</summary>
    /// <param name="title">Title of the section.</param>
    /// <param name="rows">What was found.</param>
    /// <param name="page">The page.</param>
    /// <param name="head">What stands at its top.</param>
    public static int Write(string title, IReadOnlyList<Found> rows, string page = Page, string head = Head)
    {
        var section = new StringBuilder().Append(CultureInfo.InvariantCulture, $"\n## {title}\n\nRun of {DateTime.UtcNow:yyyy-MM-dd}.\n\n| what | found | goal | kept |\n| --- | ---: | ---: | --- |\n");
        foreach (var row in rows)
        {
            section.Append(CultureInfo.InvariantCulture, $"| {row.What} | {row.Value} | {row.Goal} | {(row.IsKept ? "yes" : "no")} |\n");
        }

        System.Console.WriteLine(section);
        var others = File.Exists(page)
            ? string.Concat(File.ReadAllText(page).Split("\n## ").Skip(1).Where(other => !other.StartsWith($"{title}\n", StringComparison.Ordinal)).Select(other => $"\n## {other.TrimEnd('\n')}\n"))
            : string.Empty;
        File.WriteAllText(page, $"{head}{others}{section}");
        return rows.All(row => row.IsKept) ? 0 : 1;
    }

    /// <summary>A share of the sorted times.</summary>
    /// <param name="times">The times.</param>
    /// <param name="share">The share, 0 to 1.</param>
    public static TimeSpan At(this IEnumerable<TimeSpan> times, double share)
    {
        var sorted = times.Order().ToList();
        return sorted.Count == 0 ? TimeSpan.Zero : sorted[Math.Min(sorted.Count - 1, (int)(share * sorted.Count))];
    }
}

/// <summary>One thing that was found.</summary>
/// <param name="What">What was looked at.</param>
/// <param name="Value">What was found.</param>
/// <param name="Goal">What is promised.</param>
/// <param name="IsKept">Whether the promise is kept.</param>
internal sealed record Found(string What, string Value, string Goal, bool IsKept)
{
    /// <summary>Something that is told and promises nothing.</summary>
    public static Found Told(string what, FormattableString value) => new(what, value.ToString(CultureInfo.InvariantCulture), "", true);

    /// <summary>Something that is at most so much.</summary>
    public static Found AtMost(string what, double value, double most, string unit = "") =>
        new(what, string.Create(CultureInfo.InvariantCulture, $"{value:0.###}{unit}"), string.Create(CultureInfo.InvariantCulture, $"<= {most:0.###}{unit}"), value <= most);

    /// <summary>Something that is at least so much.</summary>
    public static Found AtLeast(string what, double value, double least, string unit = "") =>
        new(what, string.Create(CultureInfo.InvariantCulture, $"{value:0.####}{unit}"), string.Create(CultureInfo.InvariantCulture, $">= {least:0.####}{unit}"), value >= least);
}
