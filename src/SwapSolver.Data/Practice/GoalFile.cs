using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Data.Practice;

/// <summary>Reads <c>data/practice/goals.json</c>.</summary>
public static class GoalFile
{
    private const double MostPercent = 1000;

    /// <summary>What the words of bakers mean in readings.</summary>
    /// <exception cref="DataFaultException">The file cannot be believed.</exception>
    public static GoalList Read(DataFolder folder, SourceKeys sources, BalanceList balances)
    {
        var root = folder.Read("practice/goals.json").Only("about", "goals");
        // A word that names a reading, or two goals, would be taken for the wrong one.
        var taken = balances.Targetable.Select(balance => balance.Id).ToHashSet(StringComparer.Ordinal);
        return new GoalList([.. root.Get("goals").Properties.Select(pair => GoalOf(pair.Key, pair.Value, sources, balances, taken))]);
    }

    private static Goal GoalOf(string id, JsonPlace place, SourceKeys sources, BalanceList balances, HashSet<string> taken)
    {
        place.Only("title", "also", "aims", "why", "source", "mark");
        _ = sources.Key(place.Get("source"));
        _ = Words.MarkOf(place.Get("mark"));
        var aims = place.Get("aims");
        if (aims.Items.Count == 0)
        {
            throw aims.Fault($"'{id}' moves no reading; name one");
        }

        return new Goal(
            Once(id, place, taken),
            place.Get("title").Text,
            [.. place.Get("also").Items.Select(word => Once(word.Text, word, taken))],
            [.. aims.Items.Select(aim => AimOf(aim, balances))],
            place.Get("why").Text);
    }

    private static string Once(string word, JsonPlace place, HashSet<string> taken) =>
        taken.Add(word) ? word : throw place.Fault($"'{word}' is a reading or a goal already; every word has one meaning");

    private static Aim AimOf(JsonPlace aim, BalanceList balances)
    {
        aim.Only("balance", "lowPercentOfOwn", "highPercentOfOwn");
        var named = aim.Get("balance");
        var balance = balances.Find(named.Text) ?? throw named.Fault($"'{named.Text}' is no balance; its file would lie in data/balances");
        var share = new OwnShare(PercentOf(aim, "lowPercentOfOwn"), PercentOf(aim, "highPercentOfOwn"));
        return share switch
        {
            { Low: null, High: null } => throw aim.Fault("this aims at nothing; give 'lowPercentOfOwn', 'highPercentOfOwn' or both"),
            { Low: { } low, High: { } high } when low.Value > high.Value =>
                throw aim.Get("lowPercentOfOwn").Fault($"'lowPercentOfOwn' is {low.Value}, above 'highPercentOfOwn' {high.Value}: nothing could be inside"),
            _ => new Aim(balance, share),
        };
    }

    private static Percent? PercentOf(JsonPlace aim, string name) => aim.Find(name) switch
    {
        null => null,
        { Number: >= 0 and <= MostPercent } place => new Percent(place.Number),
        { } place => throw place.Fault($"'{name}' is {place.Number}; it must lie between 0 and {MostPercent}"),
    };
}
