using SwapSolver.Console.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Console.Tests.Verbs;

public sealed class JobTests
{
    private static readonly string[] Start = ["job", "start", "--formula", "almond-rolls", "--parts", "variants", "--without", "egg,peanut", "--diet", "dairy-free"];

    private static async Task<string> IdOf(OwnKitchen kitchen) =>
        Assert.Single((await kitchen.Run("job", "list", "--json")).Ends(0).Read<ListJobsResponse>().Jobs).Name["jobs/".Length..];

    [Fact]
    public async Task Results_go_on_behind_the_last_whole_line_and_another_jobs_file_is_left_alone()
    {
        using var kitchen = new OwnKitchen();
        var file = kitchen.File("results.jsonl", string.Empty);
        Assert.Contains("3 of 3 items", (await kitchen.Run([.. Start, "--out", file])).Ends(0).Out, StringComparison.Ordinal);
        var whole = await File.ReadAllLinesAsync(file);
        Assert.Equal(3, whole.Length);

        var id = await IdOf(kitchen);
        // As a process leaves it that was killed while it wrote the second result.
        await File.WriteAllTextAsync(file, whole[0] + "\n" + whole[1][..20]);
        (await kitchen.Run("job", "results", id, "--out", file)).Ends(0);
        Assert.Equal(whole, await File.ReadAllLinesAsync(file));
        Assert.Equal(whole, (await kitchen.Run("job", "results", id)).Ends(0).Out.TrimEnd().Split('\n'));

        var other = kitchen.File("other.jsonl", "{ \"name\": \"jobs/other/items/1\", \"place\": 1 }\n");
        (await kitchen.Run("job", "results", id, "--out", other)).Refuses("other.jsonl", "--out");
        Assert.Single(await File.ReadAllLinesAsync(other));
    }

    [Fact]
    public async Task A_job_is_left_paused_told_to_go_on_watched_to_its_end_and_then_stays()
    {
        using var kitchen = new OwnKitchen();
        (await kitchen.Run([.. Start, "--leave", "--name", "spring"])).Ends(0);
        var id = await IdOf(kitchen);
        Assert.Contains("paused", (await kitchen.Run("job", "pause", id)).Ends(0).Out, StringComparison.Ordinal);
        // Nothing more comes of it while it is paused: the answer is 'no'.
        Assert.Contains("0 of 0 and more items", (await kitchen.Run("job", "watch", id)).Ends(1).Out, StringComparison.Ordinal);
        Assert.Contains("spring", (await kitchen.Run("job", "resume", id)).Ends(0).Out, StringComparison.Ordinal);
        Assert.Contains("done, 3 of 3 items", (await kitchen.Run("job", "watch", id)).Ends(0).Out, StringComparison.Ordinal);
        (await kitchen.Run("job", "cancel", id)).Refuses("ended", "another job");
    }

    [Fact]
    public async Task What_is_no_job_is_refused_and_the_way_out_is_said()
    {
        using var kitchen = new OwnKitchen();
        (await kitchen.Run("job", "show", "none")).Refuses("jobs/none", "job list");
        (await kitchen.Run("job", "start", "--without", "eg", "--formula", "almond-rolls")).Refuses("without[0]", "egg");
        (await BuiltConsole.Run("job", "start", "--parts", "pictures")).Refuses("--parts", "CHARTS");
        (await BuiltConsole.Run([.. Start, "--leave", "--out", "file"])).Refuses("--out", "job results");
    }
}
