using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Data.Balances;

/// <summary>Reads <c>data/balances/</c>: one file a balance.</summary>
public static class BalanceFiles
{
    /// <summary>The rules with their bands and words.</summary>
    /// <exception cref="DataFaultException">A file cannot be believed.</exception>
    public static BalanceList Read(DataFolder folder, SourceKeys sources) =>
        new(id => Settings(folder, sources, id), Convention(folder.Read("balances/net-carbohydrate.json")));

    private static BalanceSettings Settings(DataFolder folder, SourceKeys sources, string id)
    {
        var root = folder.Read($"balances/{id}.json")
            .Only("id", "title", "unit", "about", "band", "target", "belowMeans", "aboveMeans", "sources", "convention");
        if (root.Get("id") is var stated && stated.Text != id)
        {
            throw stated.Fault($"the id '{stated.Text}' is not the file's name '{id}'");
        }

        var band = root.Get("band").Only(
            "fixedLow", "fixedHigh", "belowPercentOfReference", "abovePercentOfReference", "whenReferenceHasNone");
        var limits = new Band(LevelOf(band, "fixedLow"), LevelOf(band, "fixedHigh"));
        if (limits is { Low: { } low, High: { } high } && low.Value > high.Value)
        {
            throw band.Get("fixedLow").Fault($"'fixedLow' is {low.Value}, above 'fixedHigh' {high.Value}: nothing could be inside");
        }

        return new BalanceSettings(
            id,
            root.Get("title").Text,
            root.Get("unit").Text,
            limits,
            PercentOf(band, "belowPercentOfReference", most: 100),
            PercentOf(band, "abovePercentOfReference", least: 100),
            LevelOf(band, "whenReferenceHasNone"),
            root.Get("belowMeans").Text,
            root.Get("aboveMeans").Text,
            [.. root.Get("sources").Items.Select(sources.Key)])
        {
            Target = root.Find("target") is { } target ? Target(target) : TargetHabits.None,
        };
    }

    private static TargetHabits Target(JsonPlace place)
    {
        place.Only("better", "newRoles", "freedRoles");
        return new TargetHabits(
            BetterOf(place.Get("better")),
            [.. place.Get("newRoles").Items.Select(Words.RoleOf)],
            [.. place.Get("freedRoles").Items.Select(Words.RoleOf)]);
    }

    private static Better BetterOf(JsonPlace place) => place.Text switch
    {
        "lower" => Better.Lower,
        "higher" => Better.Higher,
        "neither" => Better.Neither,
        var other => throw place.Fault($"'{other}' is no way of a reading; known are lower, higher and neither"),
    };

    private static NetCarbohydrateConvention Convention(JsonPlace root)
    {
        var convention = root.Get("convention").Only(
            "name", "erythritolTakenOffPercent", "otherPolyolsTakenOffPercent", "alluloseTakenOffPercent");
        Percent Share(string name) => PercentOf(convention, name, most: 100) ?? throw convention.Fault($"'{name}' is missing here");
        return new NetCarbohydrateConvention(
            convention.Get("name").Text,
            Share("erythritolTakenOffPercent"),
            Share("otherPolyolsTakenOffPercent"),
            Share("alluloseTakenOffPercent"));
    }

    private static Level? LevelOf(JsonPlace band, string name) =>
        band.Find(name) is { } place ? new Level(place.Number) : null;

    private static Percent? PercentOf(JsonPlace band, string name, double least = 0, double most = 1000)
    {
        if (band.Find(name) is not { } place)
        {
            return null;
        }

        return place.Number >= least && place.Number <= most
            ? new Percent(place.Number)
            : throw place.Fault($"'{name}' is {place.Number}; it must lie between {least} and {most}");
    }
}
