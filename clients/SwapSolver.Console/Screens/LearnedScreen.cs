using System.Globalization;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>What the kitchen learned, and what it could learn next.</summary>
internal static class LearnedScreen
{
    /// <summary>Shows every learned fact.</summary>
    public static void ShowAll(Screen screen, ListLearnedFactsResponse response)
    {
        if (response.Facts.Count == 0)
        {
            screen.Sentence("Nothing was learned yet. Write a bake down with: swapsolver trial add NAME --minutes MIN --core C");
        }

        foreach (var fact in response.Facts)
        {
            Show(screen, fact);
        }
    }

    /// <summary>Shows one fact: where it started, what was measured, what is known now.</summary>
    public static void Show(Screen screen, LearnedFact fact)
    {
        screen.Part($"{fact.Name[(fact.Name.IndexOf('/') + 1)..]}: {fact.Title} [{fact.Unit}]{(fact.Used ? "" : ", turned off")}");
        screen.Item($"before  {Range(fact.Prior)}");
        screen.Item(fact.Evidence.Count == 0 ? "measured  nothing that counts" : $"measured  {string.Join(", ", fact.Evidence.TakeLast(10).Select(one => Number(one.Value)))} ({fact.Evidence.Count} in all)");
        screen.Item($"now  {Range(fact.Now)}");
    }

    /// <summary>Shows which tests would help.</summary>
    public static void ShowNext(Screen screen, SuggestTrialsResponse response)
    {
        foreach (var (test, place) in response.Suggestions.Select((test, place) => (test, place + 1)))
        {
            screen.Part($"{place}. {test.Test}");
            screen.Item(string.Create(CultureInfo.InvariantCulture, $"{test.Why} It is {test.SpreadPercent:0} % wide for that now, and would be {test.SpreadAfterPercent:0} %."));
        }
    }

    private static string Range(Estimate range) => $"{Number(range.Value)} ({Number(range.Low)} to {Number(range.High)})";

    private static string Number(double figure) => figure.ToString("0.###", CultureInfo.InvariantCulture);
}
