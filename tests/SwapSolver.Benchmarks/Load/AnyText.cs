using System.Diagnostics;
using SwapSolver.Lines.Tests;
using SwapSolver.Tables.Tests;

namespace SwapSolver.Benchmarks.Load;

/// <summary>How long whatever is pasted keeps a processor: lines and tables, spoilt in every way that the tests spoil them, each by itself.</summary>
internal static class AnyText
{
    /// <summary>The longest that one of them may take, by the acceptance of the project [ms].</summary>
    private const double Most = 50;

    /// <summary>The machine may have been away; a slow text is slow every time.</summary>
    private const int Tries = 6;

    /// <summary>The first calls of a process are slow: so many are read once before they are timed.</summary>
    private const int Warming = 1000;

    /// <summary>Runs it.</summary>
    /// <param name="texts">How many of each.</param>
    public static int Run(int texts)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(texts, 1);
        var (lines, tables) = (new TextMill(1, TestLines.Written), new TableMill(1));
        var pasted = Enumerable.Range(0, texts).Select(number => number % 2 == 0 ? lines.Bytes() : lines.Mutated());
        return LoadPage.Write("Whatever is pasted", [
            .. Times("lines of text", TextMill.Longest.Concat(pasted), text => TestLines.Reader.Read(text, null)),
            .. Times("pieces of tables", Enumerable.Range(0, texts).Select(_ => tables.Any()), slice => TestTables.Reader.Read(slice)),
        ]);
    }

    private static List<Found> Times<T>(string what, IEnumerable<T> all, Action<T> read)
    {
        var (count, took) = (0, new List<double>());
        foreach (var one in all)
        {
            if (count++ < Warming)
            {
                read(one);
            }

            var time = Timed(one, read);
            for (var more = 1; more < Tries && time > Most; more++)
            {
                time = Math.Min(time, Timed(one, read));
            }

            took.Add(time);
        }

        took.Sort();
        return [
            Found.Told($"{what}", $"{count}"),
            Found.Told("half of them take at most", $"{took[count / 2]:0.000} ms"),
            Found.AtMost("the slowest, at best of a few times [ms]", took[^1], Most),
        ];
    }

    private static double Timed<T>(T one, Action<T> read)
    {
        var start = Stopwatch.GetTimestamp();
        read(one);
        return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
    }
}
