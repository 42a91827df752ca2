using System.Diagnostics;
using System.Globalization;
using System.Text;
using SwapSolver.Records;
using SwapSolver.Records.Formulas;
using SwapSolver.Records.Whole;

namespace SwapSolver.Benchmarks.Growth;

/// <summary>A page of the list and one formula, by how many formulas a kitchen has, each with ten revisions. Both sizes are
/// measured in turn within one run, so that what else the machine does falls on both; only ratios are written.</summary>
internal static class RecordsRun
{
    private const int Few = 1_000, Many = 100_000, Revisions = 10, Turns = 2_000, PageSize = 100;

    private const string At = "2026-05-01T12:00:00.000Z";

    private static readonly string Document =
        $$"""{"displayName":"Loaf","lines":[{{string.Join(',', Enumerable.Range(0, 9).Select(line => $$"""{"ingredient":"ingredients/almond-meal","grams":{{10 + line}}}"""))}}],"slices":14}""";

    /// <summary>Measures and writes the results.</summary>
    /// <param name="results">The file.</param>
    /// <param name="servers">Connection strings of two empty databases of a server; none where only the embedded engine is measured.</param>
    public static async Task<int> Write(string results, string[] servers)
    {
        var folder = Directory.CreateTempSubdirectory("kitchen-records-");
        var text = new StringBuilder("# A list page and one formula, by how much there is\n\n");
        text.Append(CultureInfo.InvariantCulture, $"Median of {Turns} turns, the sizes in turn within one run; a page holds {PageSize} formulas and begins anywhere; {Revisions} revisions a formula. {Few} formulas = 1.\n\n");
        text.Append(CultureInfo.InvariantCulture, $"| engine | asked for | {Few} formulas, {Few * Revisions} revisions | {Many} formulas, {Many * Revisions} revisions |\n| --- | --- | ---: | ---: |\n");
        var worst = 0.0;
        var engines = new List<(string Name, string Few, string Many)> { ("embedded", Path.Combine(folder.FullName, "few"), Path.Combine(folder.FullName, "many")) };
        if (servers.Length == 2)
        {
            engines.Add(("PostgreSQL", servers[0], servers[1]));
        }

        foreach (var (name, fewPlace, manyPlace) in engines)
        {
            using var few = new KitchenRecords(fewPlace);
            using var many = new KitchenRecords(manyPlace);
            await few.Whole.ReplaceAsync(Rows(Few));
            await many.Whole.ReplaceAsync(Rows(Many));
            foreach (var (asked, ask) in new (string, Action<KitchenRecords, string>)[]
            {
                ("a list page", (records, id) => Require(records.Formulas.List(id, PageSize, FormulaFilter.InUse).Count > 0)),
                ("one formula, its newest revision", (records, id) => Require(records.Formulas.Find(id, null) is not null)),
                ("one formula, its first revision", (records, id) => Require(records.Formulas.Find(id, 1) is not null)),
                ("its history", (records, id) => Require(records.Formulas.ListRevisions(id, null, PageSize).Count == Revisions)),
            })
            {
                var ratio = Ratio(few, many, ask);
                worst = Math.Max(worst, ratio);
                text.Append(CultureInfo.InvariantCulture, $"| {name} | {asked} | 1 | {ratio:0.00} |\n");
            }
        }

        folder.Delete(recursive: true);
        await File.WriteAllTextAsync(results, text.ToString());
        System.Console.Write(text);
        return worst <= 2 ? 0 : 1;
    }

    private static double Ratio(KitchenRecords few, KitchenRecords many, Action<KitchenRecords, string> ask)
    {
        var random = new Random(1);
        var (ofFew, ofMany) = (new List<long>(Turns), new List<long>(Turns));
        for (var turn = -Turns / 10; turn < Turns; turn++)
        {
            // The last page of all may hold nothing after its last formula.
            var (one, other) = (Timed(() => ask(few, Id(random.Next(Few - 1)))), Timed(() => ask(many, Id(random.Next(Many - 1)))));
            if (turn >= 0)
            {
                ofFew.Add(one);
                ofMany.Add(other);
            }
        }

        return (double)Median(ofMany) / Median(ofFew);
    }

    private static long Timed(Action ask)
    {
        var start = Stopwatch.GetTimestamp();
        ask();
        return Stopwatch.GetTimestamp() - start;
    }

    private static long Median(List<long> times) => times.Order().ElementAt(times.Count / 2);

    private static void Require(bool isThere)
    {
        if (!isThere)
        {
            throw new InvalidOperationException("what was asked for is not there");
        }
    }

    private static string Id(int number) => number.ToString("'loaf-'000000", CultureInfo.InvariantCulture);

    private static IEnumerable<RecordRow> Rows(int count) => Enumerable.Range(0, count).SelectMany(number => Enumerable.Range(1, Revisions)
        .Select(revision => (RecordRow)new RecordRow.OneRevision(new Revision(Id(number), revision, Document, $"revision {revision}", "[]", At)))
        .Prepend(new RecordRow.Formula(new FormulaHead(Id(number), $"Loaf {number}", Revisions, null, Revisions, $"etag-{number}", At, At, null))));
}
