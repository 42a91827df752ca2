using System.Globalization;
using System.Runtime.Versioning;
using Microsoft.Data.Sqlite;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Records.Formulas;
using SwapSolver.Records.Whole;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Records.Tests.Faults;

/// <summary>What may befall the embedded file, done for real: nothing that was acknowledged is lost, and what went wrong is said.</summary>
public sealed class EmbeddedFaultTests : IDisposable
{
    private static readonly WriteRequest Asked = new(string.Empty, string.Empty, "2026-05-01T12:00:00.000Z", "2026-05-01T12:00:00.000Z");

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("kitchen-faults-");

    private string Place => Path.Combine(folder.FullName, "records");

    private string DatabaseFile => Path.Combine(Place, "kitchen.db");

    public void Dispose() => folder.Delete(recursive: true);

    private static FormulaDraft Draft(string content) => new($$"""{"content":"{{content}}"}""", "Loaf", string.Empty, "[]");

    private async Task<FormulaHead> Saved(string id = "loaf")
    {
        using var records = new KitchenRecords(Place);
        return (await records.Formulas.UpdateAsync(id, Draft("first"), string.Empty, true, Asked)).Now!;
    }

    private void MustHold(string id, long newest)
    {
        using var records = new KitchenRecords(Place);
        Assert.Equal(newest, records.Formulas.Find(id)?.Newest);
        Assert.Empty(WholeRecords.FindDamage(DatabaseFile));
    }

    [Fact]
    public async Task A_program_that_is_killed_in_the_middle_of_its_writes_loses_none_that_was_acknowledged()
    {
        const int rounds = 50, writes = 10_000;
        // Seeded, so that a failure can be looked at again: the number of writes after which it is killed.
        var random = new Random(50);
        var acknowledged = new Dictionary<string, (long Newest, string Document)>();
        for (var round = 0; round < rounds; round++)
        {
            using var process = WriterProgram.Start(Place, round * writes, writes);
            var last = random.Next(1, 400);
            for (var seen = 0; seen < last; seen++)
            {
                var words = (await process.StandardOutput.ReadLineAsync().WaitAsync(WriterProgram.Patience))!.Split(' ');
                acknowledged[words[1]] = (long.Parse(words[2], CultureInfo.InvariantCulture), $$"""{"n":{{words[0]}}}""");
            }

            process.Kill();
            await process.WaitForExitAsync().WaitAsync(WriterProgram.Patience);
            foreach (var line in (await process.StandardOutput.ReadToEndAsync()).Split('\n').Select(line => line.Split(' ')).Where(words => words.Length == 3 && words[2].Length > 0))
            {
                acknowledged[line[1]] = (long.Parse(line[2], CultureInfo.InvariantCulture), $$"""{"n":{{line[0]}}}""");
            }

            Assert.NotEqual(0, process.ExitCode);
            using var records = new KitchenRecords(Place);
            foreach (var (id, (newest, document)) in acknowledged)
            {
                Assert.Equal(document, records.Formulas.Find(id, newest)?.Revision.Document);
            }

            Assert.Empty(WholeRecords.FindDamage(DatabaseFile));
        }
    }

    [Fact]
    public async Task Two_programs_write_into_one_file_and_neither_loses_a_write()
    {
        var both = await Task.WhenAll(WriterProgram.Run(Place, 0, 300), WriterProgram.Run(Place, 1000, 300));
        Assert.All(both, ran => Assert.Equal(0, ran.ExitCode));
        using var records = new KitchenRecords(Place);
        var revisions = Enumerable.Range(0, 20).SelectMany(loaf => records.Formulas.ListRevisions($"loaf-{loaf}", null, 1000)).Select(one => one.Document).ToHashSet();
        Assert.Equal(600, revisions.Count);
    }

    [Fact]
    public async Task A_full_disk_is_said_and_what_was_there_stays_and_can_be_written_again_when_there_is_room()
    {
        Directory.CreateDirectory(Place);
        await using var disk = await SmallDisk.At(Place);
        await Saved();
        using (var records = new KitchenRecords(Place))
        {
            var fault = await Assert.ThrowsAsync<RecordsFaultException>(async () =>
            {
                for (var turn = 0; turn < 1000; turn++)
                {
                    await records.Formulas.UpdateAsync("large", Draft(new string('x', 20_000) + turn), string.Empty, true, Asked);
                }
            });
            Assert.Contains("the disk is full", fault.Message, StringComparison.Ordinal);
            // Reading goes on meanwhile.
            Assert.Equal(1, records.Formulas.Find("loaf")!.Newest);
        }

        await disk.MakeRoom();
        MustHold("loaf", 1);
        using var again = new KitchenRecords(Place);
        Assert.Equal(Outcome.Done, (await again.Formulas.UpdateAsync("loaf", Draft("second"), string.Empty, true, Asked)).Outcome);
    }

    [Fact]
    [SupportedOSPlatform("linux")]
    public async Task A_file_that_may_only_be_read_is_said_and_not_changed()
    {
        await Saved();
        // The system's nobody may read it and not write: the super-user of a test machine may do everything.
        File.SetUnixFileMode(folder.FullName, (UnixFileMode)0b111_101_101);
        File.SetUnixFileMode(DatabaseFile, (UnixFileMode)0b110_100_100);
        string[] asNobody = Environment.IsPrivilegedProcess ? ["setpriv", "--reuid=65534", "--regid=65534", "--clear-groups", "env", "HOME=/tmp", "DOTNET_EnableDiagnostics=0"] : [];
        if (!Environment.IsPrivilegedProcess)
        {
            File.SetUnixFileMode(DatabaseFile, UnixFileMode.UserRead);
        }

        var (exitCode, said) = await WriterProgram.Run(Place, 0, 1, asNobody);
        Assert.Equal(3, exitCode);
        Assert.Contains("nothing of this was written", said, StringComparison.Ordinal);
        File.SetUnixFileMode(DatabaseFile, (UnixFileMode)0b110_100_100);
        MustHold("loaf", 1);
    }

    [Fact]
    public async Task A_damaged_page_is_said_with_the_way_out_and_the_file_is_left_as_it_is()
    {
        await Saved();
        using (var records = new KitchenRecords(Place))
        {
            for (var turn = 0; turn < 50; turn++)
            {
                await records.Formulas.UpdateAsync("loaf", Draft(new string('x', 3000) + turn), string.Empty, true, Asked);
            }
        }

        // What stands in the log goes into the file, then every page after the first is overwritten.
        using (var connection = new SqliteConnection($"Data Source={DatabaseFile};Pooling=False"))
        {
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = "PRAGMA wal_checkpoint(TRUNCATE)";
            command.ExecuteNonQuery();
        }

        var content = await File.ReadAllBytesAsync(DatabaseFile);
        Array.Fill(content, (byte)0xA5, 4096, content.Length - 4096);
        await File.WriteAllBytesAsync(DatabaseFile, content);

        using var damaged = new KitchenRecords(Place);
        var fault = Assert.Throws<RecordsFaultException>(() => damaged.Formulas.Find("loaf"));
        Assert.Contains("damaged", fault.Message, StringComparison.Ordinal);
        Assert.Contains("records restore", fault.Message, StringComparison.Ordinal);
        Assert.Contains(DatabaseFile, fault.Message, StringComparison.Ordinal);
        Assert.Equal(content, await File.ReadAllBytesAsync(DatabaseFile));
    }

    [Fact]
    public async Task A_file_that_is_none_of_ours_is_said_and_left_as_it_is()
    {
        Directory.CreateDirectory(Place);
        await File.WriteAllTextAsync(DatabaseFile, "Grandmother's bread: a handful of flour, and water until it feels right. Bake until done.");
        using var records = new KitchenRecords(Place);
        Assert.Contains("none of ours", Assert.Throws<RecordsFaultException>(() => records.Formulas.Find("loaf")).Message, StringComparison.Ordinal);
        Assert.StartsWith("Grandmother", await File.ReadAllTextAsync(DatabaseFile), StringComparison.Ordinal);
    }

    [Fact]
    public void Who_looked_before_the_first_write_leaves_nothing_behind_for_records_that_are_taken_away()
    {
        using var records = new KitchenRecords(Place);
        var before = records.Stamp;
        records.Put([new MeasuredFact("salt", Fact.WaterBound, new Range(1, 2, 3), "weighed")]);
        Assert.True(records.VersionOf(before) > 0);
        Directory.Delete(Place, recursive: true);

        Assert.Equal(before, records.Stamp);
        Assert.Equal(0, records.VersionOf(records.Stamp));
    }

    [Fact]
    public async Task Records_of_a_newer_release_are_said_and_left_as_they_are()
    {
        await Saved();
        using (var connection = new SqliteConnection($"Data Source={DatabaseFile};Pooling=False"))
        {
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = "INSERT INTO SchemaVersions (ScriptName, Applied) VALUES ('SwapSolver.Records.Migrations.9999-tomorrow.sql', '2030-01-01')";
            command.ExecuteNonQuery();
        }

        using var records = new KitchenRecords(Place);
        var fault = await Assert.ThrowsAsync<RecordsFaultException>(() => records.Formulas.UpdateAsync("loaf", Draft("second"), string.Empty, true, Asked));
        Assert.Contains("newer release", fault.Message, StringComparison.Ordinal);
        Assert.Contains("9999-tomorrow", fault.Message, StringComparison.Ordinal);
        using var connected = new SqliteConnection($"Data Source={DatabaseFile};Pooling=False");
        connected.Open();
        using var count = connected.CreateCommand();
        count.CommandText = "SELECT newest FROM formulas WHERE id = 'loaf'";
        Assert.Equal(1L, count.ExecuteScalar());
    }
}
