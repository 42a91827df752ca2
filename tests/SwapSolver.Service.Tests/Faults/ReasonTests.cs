using Google.Rpc;
using Grpc.Core;
using SwapSolver.Service.Networking.OpenApi;
using SwapSolver.Service.Tests.Running;
using SwapSolver.Solving.Models;
using SwapSolver.V1;
using Reason = SwapSolver.V1.CallFault.Types.Reason;

namespace SwapSolver.Service.Tests.Faults;

/// <summary>Every reason in the contract's table of errors is reached, with the code and the details that its row promises.</summary>
[Collection(OpenKitchen.Name)]
public sealed class ReasonTests(OpenKitchen kitchen)
{
    private const string Mine = "formulas/of-reasons";

    public static TheoryData<string> Reasons => [.. Table().Values.Where(value => value.Number != 0).Select(value => value.Name)];

    private static Google.Protobuf.Reflection.EnumDescriptor Table() => V1.CallFault.Descriptor.EnumTypes.Single();

    [Theory]
    [MemberData(nameof(Reasons))]
    public async Task A_call_ends_for_every_reason_of_the_table_as_its_row_says(string name)
    {
        var row = new ContractComments().Of($"{Table().FullName}.{name}");
        var reason = (Reason)Table().FindValueByName(name).Number;
        var faults = new List<RpcException>();
        foreach (var ask in Ways(reason))
        {
            faults.Add(await Assert.ThrowsAsync<RpcException>(ask));
        }

        // Each code that the row names, and no other.
        var told = faults.Select(fault => Spelled(fault.StatusCode)).Distinct().Order(StringComparer.Ordinal);
        Assert.Equal(Codes.Where(code => row.Contains(code, StringComparison.Ordinal)).Order(StringComparer.Ordinal), told);
        foreach (var fault in faults)
        {
            var status = fault.GetRpcStatus();
            Assert.NotNull(status);
            Assert.Equal((int)fault.StatusCode, status.Code);
            Assert.Equal((name, "swapsolver"), (status.GetDetail<ErrorInfo>().Reason, status.GetDetail<ErrorInfo>().Domain));
            Assert.Equal(row.Contains(nameof(BadRequest), StringComparison.Ordinal), status.GetDetail<BadRequest>() is { FieldViolations.Count: > 0 });
            Assert.Equal(row.Contains(nameof(RetryInfo), StringComparison.Ordinal), status.GetDetail<RetryInfo>() is { RetryDelay: not null });
            Assert.Equal(row.Contains(nameof(RequestInfo), StringComparison.Ordinal), status.GetDetail<RequestInfo>() is { RequestId.Length: > 0 });
            if (row.Contains("metadata", StringComparison.Ordinal))
            {
                Assert.NotEmpty(status.GetDetail<ErrorInfo>().Metadata);
            }
        }
    }

    private static readonly string[] Codes =
    [
        .. Enum.GetValues<StatusCode>().Where(code => code != StatusCode.OK).Select(Spelled),
    ];

    private static string Spelled(StatusCode code) => string.Concat(code.ToString().Select((letter, place) => place > 0 && char.IsUpper(letter) ? $"_{letter}" : $"{char.ToUpperInvariant(letter)}"));

    /// <summary>Each way in which a caller is told this reason.</summary>
    private IEnumerable<Func<Task>> Ways(Reason reason) => reason switch
    {
        Reason.InvalidRequest => [async () => await Bakes.Balance(kitchen.Service, null)],
        Reason.BrokenMessage => [() => Raw(kitchen.Service, [0xFF, 0xFF, 0xFF])],
        Reason.NotFound =>
        [
            async () => await kitchen.Service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Name = "formulas/hazelnut-tin-loav" }),
            async () => await kitchen.Service.Keys.RevokeKeyAsync(new RevokeKeyRequest { Name = "keys/none" }),
        ],
        Reason.NothingWritten => [async () => await kitchen.Service.Ingredients.DeleteIngredientAsync(new DeleteIngredientRequest { Name = "ingredients/butter" })],
        Reason.PutAway =>
        [
            Alone(async service =>
            {
                await service.Formulas.DeleteFormulaAsync(new DeleteFormulaRequest { Name = Mine });
                await service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Name = Mine });
            }),
            Alone(async service =>
            {
                await service.Formulas.DeleteFormulaAsync(new DeleteFormulaRequest { Name = Mine });
                await service.Formulas.PublishFormulaAsync(new PublishFormulaRequest { Name = Mine });
            }),
        ],
        Reason.AlreadyExists => [Alone(async service => await service.Formulas.CopyFormulaAsync(new CopyFormulaRequest { Name = Mine, FormulaId = "of-reasons" }))],
        Reason.StaleEtag => [Alone(async service => await service.Formulas.DeleteFormulaAsync(new DeleteFormulaRequest { Name = Mine, Etag = "\"an-old-one\"" }))],
        Reason.Shipped => [async () => await kitchen.Service.Formulas.DeleteFormulaAsync(new DeleteFormulaRequest { Name = "formulas/almond-rolls" })],
        Reason.Published => [Alone(async service =>
        {
            await service.Formulas.PublishFormulaAsync(new PublishFormulaRequest { Name = Mine });
            await service.Formulas.DeleteFormulaAsync(new DeleteFormulaRequest { Name = Mine });
        })],
        Reason.NotEmpty => [Alone(Imported), Alone(Restored)],
        Reason.KeyNeeded => [async () => await new V1.KeyService.KeyServiceClient(kitchen.Service.With(null)).ListKeysAsync(new ListKeysRequest())],
        Reason.UnknownKey => [async () => await new V1.KeyService.KeyServiceClient(kitchen.Service.With("none")).ListKeysAsync(new ListKeysRequest())],
        Reason.RoleTooLow => [Alone(async service =>
        {
            var made = await service.Keys.CreateKeyAsync(new CreateKeyRequest { DisplayName = "tablet", Role = Key.Types.Role.Reader });
            await new V1.KeyService.KeyServiceClient(service.With(made.Secret)).ListKeysAsync(new ListKeysRequest());
        })],
        Reason.TooManyCalls => [Alone(
            async service =>
            {
                for (var call = 0; call < 5; call++)
                {
                    await Bakes.Balance(service, Bakes.Rolls);
                }
            },
            null,
            ("Limits:CallerBurst", "3"),
            ("Limits:CallerCallsPerSecond", "0.01"))],
        Reason.Busy => [Busy],
        Reason.OutOfTime => [Alone(async service => await Bakes.Vary(service, Bakes.Rolls), new StandInSolver { Instead = (_, _) => Solution.None(Outcome.OutOfTime) })],
        Reason.CallCancelled => [Alone(async service => await Bakes.Vary(service, Bakes.Rolls), new StandInSolver { Instead = (_, _) => throw new OperationCanceledException() })],
        Reason.RecordsUnreachable => [Alone(async service =>
        {
            foreach (var file in Directory.GetFiles(service.Records))
            {
                await File.WriteAllTextAsync(file, "flour has got into the records, and a good deal of it");
            }

            await service.Formulas.GetFormulaAsync(new GetFormulaRequest { Name = Mine });
        })],
        Reason.FaultOfService => [Alone(async service => await Bakes.Vary(service, Bakes.Rolls), new StandInSolver { Instead = (_, _) => throw new InvalidOperationException() })],
        Reason.JobEnded => [Alone(async service =>
        {
            var jobs = new JobService.JobServiceClient(service.With(service.Key));
            var job = await jobs.CreateCatalogueJobAsync(new CreateCatalogueJobRequest { Catalogue = new Catalogue { Parts = { Catalogue.Types.Part.Charts }, Formulas = { Mine } } });
            await jobs.CancelJobAsync(new CancelJobRequest { Name = job.Name });
            await jobs.ResumeJobAsync(new ResumeJobRequest { Name = job.Name });
        })],
        _ => throw new InvalidOperationException($"no way to {reason} is known yet"),
    };

    /// <summary>In a kitchen of its own, which has one formula.</summary>
    private static Func<Task> Alone(Func<RunningService, Task> ask, ISolver? solver = null, params (string Name, string Value)[] settings) => async () =>
    {
        await using var service = await RunningService.Start(solver, null, settings);
        await service.Formulas.CreateFormulaAsync(new CreateFormulaRequest { Formula = Bakes.Rolls, FormulaId = "of-reasons" });
        await ask(service);
    };

    private static async Task Raw(RunningService service, byte[] message)
    {
        var bytes = Marshallers.Create<byte[]>(one => one, one => one);
        var method = new Method<byte[], byte[]>(MethodType.Unary, "swapsolver.v1.BalanceService", "BalanceFormula", bytes, bytes);
        await service.With(service.Key).AsyncUnaryCall(method, null, default, message);
    }

    private static async Task Imported(RunningService service)
    {
        using var from = service.Whole.ExportRecords(new ExportRecordsRequest());
        using var into = service.Whole.ImportRecords();
        while (await from.ResponseStream.MoveNext(CancellationToken.None))
        {
            await into.RequestStream.WriteAsync(new ImportRecordsRequest { Record = from.ResponseStream.Current });
        }

        await into.RequestStream.CompleteAsync();
        await into;
    }

    private static async Task Restored(RunningService service)
    {
        using var from = service.Whole.BackupRecords(new BackupRecordsRequest());
        using var into = service.Whole.RestoreRecords();
        while (await from.ResponseStream.MoveNext(CancellationToken.None))
        {
            await into.RequestStream.WriteAsync(new RestoreRecordsRequest { Content = from.ResponseStream.Current.Content });
        }

        await into.RequestStream.CompleteAsync();
        await into;
    }

    private static async Task Busy()
    {
        await using var full = await FullKitchen.Open();
        await Bakes.Check(full.Service, Bakes.Rolls);
    }
}
