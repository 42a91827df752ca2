using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using SwapSolver.OrTools;
using SwapSolver.Solving.Models;

namespace SwapSolver.Benchmarks.Race;

/// <summary>The fixed questions by each solver, model by model in turn, so that all of them meet the same machine.</summary>
public static class SolverRace
{
    /// <summary>How far two proven optima may lie apart, relative to the larger or to 1.</summary>
    private const double Tolerance = 1e-6;

    /// <summary>Runs the race and writes a page; returns 0 where no two solvers disagree.</summary>
    public static int Write(string page)
    {
        var folder = Directory.CreateTempSubdirectory("swapsolver-race-");
        try
        {
            var questions = FixedQuestions.All();
            ImmutableArray<IRunner> runners =
            [
                InProcess.Ours,
                new InProcess("cbc (OR-Tools)", new OrToolsSolver(Backend.Cbc)),
                new InProcess("highs (OR-Tools)", new OrToolsSolver(Backend.Highs)),
                NativeRunner.Glpsol,
                NativeRunner.Cbc,
                new PackagedHighs(),
            ];
            var finishes = questions.Select((question, index) => Run(question, Path.Combine(folder.FullName, $"q{index}"), runners)).ToImmutableArray();
            foreach (var runner in runners)
            {
                runner.Dispose();
            }

            var apart = questions.Zip(finishes).Where(pair => Disagree(pair.Second)).Select(pair => pair.First.Name).ToList();
            File.WriteAllText(page, Page(questions, runners, finishes, apart));
            return apart.Count == 0 ? 0 : 1;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static ImmutableArray<Finish> Run(FixedQuestion question, string file, ImmutableArray<IRunner> runners)
    {
        File.WriteAllText($"{file}.mps", MpsText.Of(question.Model));
        using (var written = Process.Start(new ProcessStartInfo("glpsol", ["--freemps", $"{file}.mps", "--check", "--wlp", $"{file}.lp"]) { RedirectStandardOutput = true })!)
        {
            written.StandardOutput.ReadToEnd();
            written.WaitForExit();
        }

        // The better of two runs: what else the machine does is no merit of the other solvers.
        var finishes = runners.Select(runner => Better(runner.Run(question, file), () => runner.Run(question, file))).ToImmutableArray();
        System.Console.Error.WriteLine($"{question.Kind}, {question.Name}: {string.Join("  ", finishes.Select(finish => finish.IsProven ? finish.Milliseconds.ToString("0.0", CultureInfo.InvariantCulture) : "-"))}  {finishes[0].Objective:R}");
        return finishes;
    }

    private static Finish Better(Finish first, Func<Finish> again)
    {
        if (!first.IsProven)
        {
            return first;
        }

        var second = again();
        return second.IsProven && second.Milliseconds < first.Milliseconds ? second : first;
    }

    private static bool Disagree(ImmutableArray<Finish> finishes)
    {
        var proven = finishes.Where(finish => finish.IsProven).Select(finish => finish.Objective).ToList();
        return proven.Any(one => proven.Any(other =>
            double.IsNaN(one) != double.IsNaN(other) || Math.Abs(one - other) > Tolerance * Math.Max(1, Math.Max(Math.Abs(one), Math.Abs(other)))));
    }

    private static string Page(
        ImmutableArray<FixedQuestion> questions, ImmutableArray<IRunner> runners, ImmutableArray<ImmutableArray<Finish>> finishes, List<string> apart)
    {
        var text = new StringBuilder(string.Create(CultureInfo.InvariantCulture, $"""
            # {questions.Length} fixed questions to a proven optimum, each solver against ours (ours = 1)

            Written by `dotnet run -c Release --project tests/SwapSolver.Benchmarks -- --race` after `npm ci` in `tests/SwapSolver.Benchmarks/Race`.
            Ratios of summed times in one run, model by model in turn, the better of two runs. Ours holds the translation of the model;
            glpsol and cbc are programs that read a text, and what they take to start, to read the very model and to end is taken off; the
            HiGHS of npm is started once for all, and its time holds the reading of a text of a few kilobytes. A model that is not proven in
            {IRunner.MostSeconds} s counts as {IRunner.MostSeconds} s and stands in brackets. Above 1 is slower than ours.

            | questions | count | {string.Join(" | ", runners.Select(runner => runner.Name))} |
            | --- | ---: |{string.Concat(runners.Select(_ => " ---: |"))}

            """));
        foreach (var kind in questions.Select(question => question.Kind).Distinct())
        {
            AppendSums(text, kind, [.. questions.Zip(finishes).Where(pair => pair.First.Kind == kind).Select(pair => pair.Second)]);
        }

        AppendSums(text, "all", finishes);
        AppendShare(text, "middle (p50)", finishes, 0.5);
        AppendShare(text, "slowest but two (p99)", finishes, 0.99);
        text.Append(CultureInfo.InvariantCulture, $"\nInfeasible: {finishes.Count(row => row[0].IsProven && double.IsNaN(row[0].Objective))}. Questions on which two proven optima differ: {apart.Count}.\n");
        apart.ForEach(name => text.Append(CultureInfo.InvariantCulture, $"- {name}\n"));
        return text.ToString();
    }

    private static void AppendSums(StringBuilder text, string kind, ImmutableArray<ImmutableArray<Finish>> rows) =>
        Append(text, kind, rows, runner => rows.Sum(row => row[runner].Milliseconds));

    private static void AppendShare(StringBuilder text, string kind, ImmutableArray<ImmutableArray<Finish>> rows, double share) =>
        Append(text, kind, rows, runner => rows.Select(row => row[runner].Milliseconds).Order().ElementAt((int)Math.Ceiling(share * rows.Length) - 1));

    private static void Append(StringBuilder text, string kind, ImmutableArray<ImmutableArray<Finish>> rows, Func<int, double> time)
    {
        text.Append(CultureInfo.InvariantCulture, $"| {kind} | {rows.Length} |");
        for (var runner = 0; runner < rows[0].Length; runner++)
        {
            var open = rows.Count(row => !row[runner].IsProven);
            text.Append(CultureInfo.InvariantCulture, $" {time(runner) / time(0):0.00}{(open == 0 ? string.Empty : $" ({open})")} |");
        }

        text.Append('\n');
    }
}
