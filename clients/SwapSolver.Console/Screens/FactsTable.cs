using System.Globalization;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>The figures of an ingredient, each with its range and the number of its source in the list below.</summary>
internal static class FactsTable
{
    /// <summary>Shows the figures, then their sources.</summary>
    public static void Show(Screen screen, IReadOnlyCollection<Fact> facts)
    {
        if (facts.Count == 0)
        {
            return;
        }

        var sources = facts.Select(fact => fact.Source).Distinct().ToList();
        screen.Part("Figures");
        if (screen.IsNarrow)
        {
            Sentences(screen, facts, sources);
        }
        else
        {
            screen.Table(Table(facts, sources));
        }

        screen.Part("Sources of the figures");
        for (var place = 0; place < sources.Count; place++)
        {
            screen.Item($"[{place + 1}] {sources[place]}");
        }
    }

    private static PlainTable Table(IEnumerable<Fact> facts, List<string> sources)
    {
        var table = new PlainTable().Words("fact").Figures("value").Figures("low").Figures("high").Words("unit").Words("mark").Words("source");
        foreach (var fact in facts)
        {
            table.Row(fact.Fact_, Write(fact.Value), Write(fact.Low), Write(fact.High), fact.Unit, fact.Mark, Number(fact, sources));
        }

        return table;
    }

    private static void Sentences(Screen screen, IEnumerable<Fact> facts, List<string> sources)
    {
        foreach (var fact in facts)
        {
            screen.Item($"{fact.Fact_}: {Write(fact.Value)} ({Write(fact.Low)} to {Write(fact.High)}) {fact.Unit}; {fact.Mark} {Number(fact, sources)}");
        }
    }

    private static string Number(Fact fact, List<string> sources) => $"[{sources.IndexOf(fact.Source) + 1}]";

    private static string Write(double figure) => figure.ToString("0.####", CultureInfo.InvariantCulture);
}
