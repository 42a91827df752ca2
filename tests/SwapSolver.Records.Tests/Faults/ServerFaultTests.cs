using System.Collections.Concurrent;
using System.Globalization;
using SwapSolver.Records.Formulas;
using SwapSolver.Records.Tests.Engines;

namespace SwapSolver.Records.Tests.Faults;

/// <summary>A server that is stopped and started while others write. It has one of its own, for it is stopped.</summary>
public sealed class ServerFaultTests(PostgresServer server) : IClassFixture<PostgresServer>
{
    private const string At = "2026-05-01T12:00:00.000Z";

    private static FormulaDraft Draft(int number) => new(string.Create(CultureInfo.InvariantCulture, $$"""{"n":{{number}}}"""), "Loaf", string.Empty, "[]");

    [Theory]
    [InlineData("fast")]
    [InlineData("immediate")]
    public async Task A_server_that_stops_and_starts_under_load_loses_no_acknowledged_write_and_errors_are_clean(string how)
    {
        using var records = new KitchenRecords(server.NewDatabase());
        await records.Formulas.CreateAsync("loaf-0", Draft(-1), new WriteRequest(string.Empty, string.Empty, At, At));
        var acknowledged = new ConcurrentBag<(string Id, long Newest, string Document)>();
        var faults = new ConcurrentBag<string>();
        using var done = new CancellationTokenSource();
        var writers = Enumerable.Range(0, 8).Select(writer => Task.Run(async () =>
        {
            for (var number = writer * 1_000_000; !done.IsCancellationRequested; number++)
            {
                var id = string.Create(CultureInfo.InvariantCulture, $"loaf-{writer}");
                try
                {
                    var changed = await records.Formulas.UpdateAsync(id, Draft(number), string.Empty, true, new WriteRequest(string.Empty, string.Empty, At, At));
                    Assert.Equal(Outcome.Done, changed.Outcome);
                    acknowledged.Add((id, changed.Now!.Newest, Draft(number).Document));
                }
                catch (RecordsFaultException fault)
                {
                    faults.Add(fault.Message);
                    await Task.Delay(5);
                }
            }
        })).ToList();
        for (var round = 0; round < 3; round++)
        {
            await Until(acknowledged.Count + 50, acknowledged);
            server.Stop(how);
            server.Start();
        }

        await Until(acknowledged.Count + 50, acknowledged);
        await done.CancelAsync();
        await Task.WhenAll(writers);

        Assert.NotEmpty(faults);
        Assert.All(faults, fault => Assert.Matches("the server|ask again", fault));
        Assert.All(acknowledged, write => Assert.Equal(write.Document, records.Formulas.Find(write.Id, write.Newest)?.Revision.Document));
    }

    private static async Task Until(int count, ConcurrentBag<(string, long, string)> acknowledged)
    {
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(60));
        while (acknowledged.Count < count)
        {
            await Task.Delay(10, patience.Token);
        }
    }
}
