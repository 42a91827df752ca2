using System.Text;
using Google.Protobuf;
using Grpc.Core;
using SwapSolver.Records.Tests.Engines;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;
using Record = SwapSolver.V1.Record;

namespace SwapSolver.Service.Tests.Services;

public sealed class RecordServiceTests(PostgresServer server) : IClassFixture<PostgresServer>
{
    /// <summary>A kitchen that wrote down something of every kind.</summary>
    private static async Task Fill(RunningService service)
    {
        await service.Ingredients.AddIngredientAsync(new AddIngredientRequest
        {
            IngredientId = "larkfield-almond",
            DisplayName = "Larkfield almond – süß",
            Like = "ingredients/almond-meal",
            Panel = new NutritionPanel { Basis = NutritionPanel.Types.Basis.Us, ServingG = "28", EnergyKcal = "170", FatG = "15", CarbohydrateG = "6", FibreG = "3", ProteinG = "6" },
        });
        await service.Ingredients.MeasureIngredientAsync(new MeasureIngredientRequest { Name = "ingredients/coconut-flour", Soak = new SoakTest { DryG = 10, DrainedG = 47.3 }, PricePerKg = 7.05 });
        await service.Ingredients.ImportIngredientsAsync(new ImportIngredientsRequest { Format = ImportIngredientsRequest.Types.Format.HouseholdWeights, Text = "id,amount,measure,grams\nalmond-meal,1,cup,97.5\n" });
        var saved = await service.Formulas.CreateFormulaAsync(new CreateFormulaRequest { Formula = Bakes.Hazelnut, FormulaId = "mine", Note = "first \"try\"\nof two", Goals = { "softer", "süßer" } });
        saved.Lines[0].Grams = 181.1;
        await service.Formulas.UpdateFormulaAsync(new UpdateFormulaRequest { Formula = saved, Note = "a gram more" });
        await service.Formulas.PublishFormulaAsync(new PublishFormulaRequest { Name = saved.Name, Revision = 1 });
        await service.Formulas.CopyFormulaAsync(new CopyFormulaRequest { Name = saved.Name, FormulaId = "gone" });
        await service.Trials.AddTrialAsync(new AddTrialRequest { Parent = "formulas/gone", Trial = new Trial { BatterMassG = 775, BakedMassG = 691.5, Minutes = 66.5, CoreCelsius = 96.1, Note = "warm day" } });
        await service.Trials.ChooseLearnedFactAsync(new ChooseLearnedFactRequest { Name = "oven-factor", Choice = ChooseLearnedFactRequest.Types.Choice.TurnOff });
        await service.Formulas.DeleteFormulaAsync(new DeleteFormulaRequest { Name = "formulas/gone" });
    }

    private static async Task<IReadOnlyList<Record>> Export(RunningService service)
    {
        using var call = service.Whole.ExportRecords(new ExportRecordsRequest());
        return await call.ResponseStream.ReadAllAsync().ToListAsync();
    }

    private static string Text(IEnumerable<Record> records) => string.Concat(records.Select(record => JsonFormatter.Default.Format(record) + "\n"));

    private static async Task<ImportRecordsResponse> Import(RunningService service, IEnumerable<Record> records)
    {
        using var call = service.Whole.ImportRecords();
        foreach (var record in records)
        {
            await call.RequestStream.WriteAsync(new ImportRecordsRequest { Record = record });
        }

        await call.RequestStream.CompleteAsync();
        return await call;
    }

    private static async Task<byte[]> Backup(RunningService service)
    {
        using var call = service.Whole.BackupRecords(new BackupRecordsRequest());
        return [.. (await call.ResponseStream.ReadAllAsync().ToListAsync()).SelectMany(piece => piece.Content)];
    }

    private static async Task<RestoreRecordsResponse> Restore(RunningService service, byte[] backup, bool replace = true)
    {
        using var call = service.Whole.RestoreRecords();
        foreach (var piece in backup.Chunk(50_000))
        {
            await call.RequestStream.WriteAsync(new RestoreRecordsRequest { Content = ByteString.CopyFrom(piece), Replace = replace });
        }

        await call.RequestStream.CompleteAsync();
        return await call;
    }

    private static async Task<(StatusCode Code, string Words)> Refused<T>(Func<Task<T>> ask)
    {
        var refusal = await Assert.ThrowsAsync<RpcException>(ask);
        return (refusal.StatusCode, refusal.Status.Detail);
    }

    /// <summary>Without the keys of the tests themselves, which differ from one service to the next.</summary>
    private static IEnumerable<Record> WithoutKeysOf(IEnumerable<Record> records, IEnumerable<Record> known) =>
        records.Where(record => record.SavedKey is null || known.Any(other => other.SavedKey?.Id == record.SavedKey.Id));

    [Theory]
    [InlineData(false, true)]
    [InlineData(true, false)]
    [InlineData(true, true)]
    [InlineData(false, false)]
    public async Task What_was_exported_imported_elsewhere_and_exported_again_is_the_same_to_the_byte(bool fromServer, bool toServer)
    {
        await using var from = await RunningService.Start(place: fromServer ? server.NewDatabase() : null);
        await using var to = await RunningService.Start(place: toServer ? server.NewDatabase() : null);
        await Fill(from);
        var exported = await Export(from);
        Assert.Equal(Enum.GetValues<Record.KindOneofCase>().Except([Record.KindOneofCase.None]), exported.Select(record => record.KindCase).Distinct().Order());

        Assert.Equal(exported.Count, (await Import(to, exported)).Records);
        Assert.Equal(Text(exported), Text(WithoutKeysOf(await Export(to), exported)));
        // And it answers as the first does.
        Assert.Equal(
            await from.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Name = "formulas/mine" }), await to.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Name = "formulas/mine" }));
        Assert.Equal(
            await from.Trials.ListLearnedFactsAsync(new ListLearnedFactsRequest()), await to.Trials.ListLearnedFactsAsync(new ListLearnedFactsRequest()));
    }

    [Theory]
    [InlineData(false, false)]
    [InlineData(false, true)]
    [InlineData(true, false)]
    public async Task A_backup_brings_back_what_was_there_and_no_more(bool fromServer, bool toServer)
    {
        await using var from = await RunningService.Start(place: fromServer ? server.NewDatabase() : null);
        await using var to = await RunningService.Start(place: toServer ? server.NewDatabase() : null);
        await Fill(from);
        var (before, backup) = (await Export(from), await Backup(from));
        await to.Formulas.CreateFormulaAsync(new CreateFormulaRequest { Formula = Bakes.Hazelnut, FormulaId = "later" });

        var (code, words) = await Refused(() => Restore(to, backup, replace: false));
        Assert.Equal(StatusCode.FailedPrecondition, code);
        Assert.Contains("--replace", words, StringComparison.Ordinal);
        await Restore(to, backup);
        Assert.Equal(Text(before), Text(WithoutKeysOf(await Export(to), before)));
    }

    [Fact]
    public async Task A_backup_that_is_taken_while_others_write_is_one_moment_of_theirs()
    {
        await using var service = await RunningService.Start();
        var formula = await service.Formulas.CreateFormulaAsync(new CreateFormulaRequest { Formula = Bakes.Hazelnut, FormulaId = "mine" });
        using var done = new CancellationTokenSource();
        var writing = Task.Run(async () =>
        {
            for (var turn = 1; !done.IsCancellationRequested; turn++)
            {
                formula.Lines[0].Grams = 100 + turn;
                formula = await service.Formulas.UpdateFormulaAsync(new UpdateFormulaRequest { Formula = formula });
            }
        });
        var backups = new List<byte[]>();
        for (var turn = 0; turn < 5; turn++)
        {
            backups.Add(await Backup(service));
        }

        await done.CancelAsync();
        await writing;
        foreach (var backup in backups)
        {
            await using var other = await RunningService.Start();
            await Restore(other, backup);
            var newest = (await other.Formulas.GetFormulaAsync(new GetFormulaRequest { Name = "formulas/mine" })).Revision;
            Assert.Equal(newest, (await other.Formulas.ListRevisionsAsync(new ListRevisionsRequest { Name = "formulas/mine", PageSize = 1000 })).Revisions.Count);
        }
    }

    [Fact]
    public async Task What_is_no_backup_or_contradicts_itself_changes_nothing()
    {
        await using var service = await RunningService.Start();
        await Fill(service);
        var (before, backup) = (await Export(service), await Backup(service));
        var damaged = backup.ToArray();
        Array.Fill(damaged, (byte)0x5A, 4096, damaged.Length - 4096);
        var lone = JsonFormatter.Default.Format(new Record { SavedRevision = before.First(record => record.SavedRevision is not null).SavedRevision });
        foreach (var (content, said) in new[]
        {
            (damaged, "backup"), (Encoding.UTF8.GetBytes("{ \"colour\": 1 }\n"), "line 1"), (Encoding.UTF8.GetBytes("bread"), "line 1"), (Encoding.UTF8.GetBytes("{}"), "record 1"),
            (Encoding.UTF8.GetBytes(lone), "contradict"), ([], "empty"),
        })
        {
            var (code, words) = await Refused(() => Restore(service, content));
            Assert.Equal(StatusCode.InvalidArgument, code);
            Assert.Contains(said, words, StringComparison.Ordinal);
            Assert.Equal(Text(before), Text(await Export(service)));
        }

        Assert.Equal(StatusCode.FailedPrecondition, (await Refused(() => Import(service, before))).Code);
        Assert.Equal(StatusCode.InvalidArgument, (await Refused(() => Import(service, [new Record()]))).Code);
    }
}
