using System.Globalization;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>The figures of an ingredient, each with its range and source.</summary>
internal static class FactsTable
{
    /// <summary>Shows the figures.</summary>
    public static void Show(Screen screen, IReadOnlyCollection<Fact> facts)
    {
        if (facts.Count == 0)
        {
            return;
        }

        screen.Part("Figures");
        if (screen.IsNarrow)
        {
            Sentences(screen, facts);
            return;
        }

        var table = new PlainTable().Words("fact").Figures("value").Figures("low").Figures("high").Words("unit").Words("mark").Words("source");
        foreach (var fact in facts)
        {
            table.Row(fact.Fact_, Write(fact.Value), Write(fact.Low), Write(fact.High), fact.Unit, fact.Mark, fact.Source);
        }

        screen.Table(table);
    }

    private static void Sentences(Screen screen, IEnumerable<Fact> facts)
    {
        foreach (var fact in facts)
        {
            screen.Item($"{fact.Fact_}: {Write(fact.Value)} ({Write(fact.Low)} to {Write(fact.High)}) {fact.Unit}; {fact.Mark}; {fact.Source}");
        }
    }

    private static string Write(double figure) => figure.ToString("0.####", CultureInfo.InvariantCulture);
}
