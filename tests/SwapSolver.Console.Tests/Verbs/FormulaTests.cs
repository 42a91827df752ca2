using SwapSolver.Console.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Console.Tests.Verbs;

public sealed class FormulaTests
{
    [Fact]
    public async Task A_formula_is_saved_changed_and_looked_back_at()
    {
        using var kitchen = new OwnKitchen();
        (await kitchen.Run("formula", "save", BuiltConsole.Demo("hazelnut-tin-loaf"), "--as", "my-loaf", "--note", "first try")).Ends(0);
        var shown = (await kitchen.Run("formula", "show", "my-loaf", "--json")).Ends(0);
        var file = kitchen.File("loaf.json", shown.Out.Replace("\"slices\": 14", "\"slices\": 16", StringComparison.Ordinal));
        var changed = (await kitchen.Run("formula", "save", file, "--note", "thinner slices", "--json")).Ends(0).Read<Formula>();
        Assert.Equal((2, 16), (changed.Revision, changed.Slices));

        // The file's etag is that of the first revision: saved once more it would overwrite the second.
        (await kitchen.Run("formula", "save", file, "--note", "again")).Refuses("changed by somebody else", changed.Etag);
        var history = (await kitchen.Run("formula", "history", "my-loaf")).Ends(0).Out;
        Assert.Contains("thinner slices", history, StringComparison.Ordinal);
        Assert.Contains("first try", history, StringComparison.Ordinal);
        Assert.Equal(14, (await kitchen.Run("formula", "show", "my-loaf", "--revision", "1", "--json")).Ends(0).Read<Formula>().Slices);
    }

    [Fact]
    public async Task A_formula_is_published_put_away_and_taken_back()
    {
        using var kitchen = new OwnKitchen();
        (await kitchen.Run("formula", "copy", "hazelnut-tin-loaf", "mine", "--called", "My loaf")).Ends(0);
        (await kitchen.Run("formula", "publish", "mine")).Ends(0);
        Assert.Contains("published in 1", (await kitchen.Run("formula", "list", "--named", "my loaf")).Ends(0).Out, StringComparison.Ordinal);
        (await kitchen.Run("formula", "remove", "mine")).Refuses("published", "unpublish it first");
        (await kitchen.Run("formula", "unpublish", "mine")).Ends(0);
        (await kitchen.Run("formula", "remove", "mine")).Ends(0);
        (await kitchen.Run("balance", "formulas/mine")).Refuses("put away", "formula restore");
        (await kitchen.Run("formula", "restore", "mine")).Ends(0);
        Assert.Contains("My loaf", (await kitchen.Run("balance", "formulas/mine")).Ends(0).Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_stored_formula_has_no_need_to_be_saved_and_a_wrong_moment_is_named()
    {
        using var kitchen = new OwnKitchen();
        (await kitchen.Run("formula", "save", "formulas/hazelnut-tin-loaf")).Refuses("stored already", "formula copy");
        var file = kitchen.File("loaf.json", """{ "displayName": "A", "createTime": 7, "lines": [{ "ingredient": "ingredients/almond-meal", "grams": 200 }], "slices": 12 }""");
        (await kitchen.Run("formula", "save", file)).Refuses("createTime: 7 is not a moment");
    }

    [Fact]
    public async Task Records_that_cannot_be_read_end_with_three_and_are_left_as_they_are()
    {
        using var kitchen = new OwnKitchen();
        var place = Directory.CreateDirectory(Path.Combine(Path.GetDirectoryName(kitchen.File("beside.txt", ""))!, "records")).FullName;
        var file = Path.Combine(place, "kitchen.db");
        await File.WriteAllTextAsync(file, "A handful of flour, and water until it feels right.");
        (await kitchen.Run("formula", "list")).Ends(3).SaysOnlyOnError("none of ours", "records restore", file);
        Assert.StartsWith("A handful", await File.ReadAllTextAsync(file), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_trial_moves_the_next_forecast_and_everything_goes_out_and_comes_back()
    {
        using var kitchen = new OwnKitchen();
        (await kitchen.Run("formula", "copy", "hazelnut-tin-loaf", "mine")).Ends(0);
        (await kitchen.Run("trial", "add", "mine", "--minutes", "66", "--core", "96", "--batter", "775", "--baked", "690", "--soak", "coconut-flour=10:52")).Ends(0);
        Assert.Contains("formulas/mine/trials/1", (await kitchen.Run("bake", "formulas/mine")).Ends(0).Out, StringComparison.Ordinal);
        Assert.Contains("oven-factor", (await kitchen.Run("trial", "learned")).Ends(0).Out, StringComparison.Ordinal);
        Assert.False((await kitchen.Run("trial", "choose", "oven-factor", "turn-off", "--json")).Ends(0).Read<LearnedFact>().Used);
        (await kitchen.Run("trial", "add", "mine", "--baked", "900")).Refuses("trial.bakedMassG", "900");
        (await kitchen.Run("trial", "add", "mine", "--soak", "coconut")).Refuses("--soak", "FOOD=DRY:DRAINED");

        var backup = kitchen.File("backup.db", "");
        (await kitchen.Run("records", "backup", backup)).Ends(0);
        using var other = new OwnKitchen();
        (await other.Run("records", "restore", backup)).Ends(0);
        Assert.Equal((await kitchen.Run("trial", "list", "mine")).Ends(0).Out, (await other.Run("trial", "list", "mine")).Ends(0).Out);
        (await other.Run("records", "restore", backup)).Refuses("--replace");
    }
}
