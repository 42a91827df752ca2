using System.Globalization;
using System.Text;
using Google.Protobuf;
using Google.Rpc;
using Grpc.Core;
using SwapSolver.Records;
using SwapSolver.Records.Whole;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Whole;
using SwapSolver.V1;
using Reason = SwapSolver.V1.CallFault.Types.Reason;

namespace SwapSolver.Service.Services;

/// <summary>Moves the records as a whole.</summary>
internal sealed class RecordService(KitchenRecords records) : V1.RecordService.RecordServiceBase
{
    private const int PieceBytes = 65_536;

    private static ReadOnlySpan<byte> DatabaseFile => "SQLite format 3\0"u8;

    /// <inheritdoc/>
    public override async Task ExportRecords(ExportRecordsRequest request, IServerStreamWriter<Record> responseStream, ServerCallContext context)
    {
        // All are read before the first is sent: a slow caller must not hold the moment open.
        var all = new List<Record>();
        records.Whole.Read(row => all.Add(RecordRows.Write(row)));
        foreach (var record in all)
        {
            await responseStream.WriteAsync(record, context.CancellationToken);
        }
    }

    /// <inheritdoc/>
    public override async Task<ImportRecordsResponse> ImportRecords(IAsyncStreamReader<ImportRecordsRequest> requestStream, ServerCallContext context)
    {
        var rows = new List<RecordRow>();
        await foreach (var request in requestStream.ReadAllAsync(context.CancellationToken))
        {
            rows.Add(Row(request.Record ?? new Record(), rows.Count + 1));
        }

        if (rows.Count > 0 && !records.Whole.IsEmpty)
        {
            throw RichFault.Of(
                Code.FailedPrecondition, "this kitchen has records already, and nothing was imported; give an empty place by --records, or put a backup in their place with RestoreRecords (records restore)", RichFault.Info(Reason.NotEmpty));
        }

        return new ImportRecordsResponse { Records = rows.Count == 0 ? 0 : await Replace(rows) };
    }

    /// <inheritdoc/>
    public override async Task BackupRecords(BackupRecordsRequest request, IServerStreamWriter<BackupPiece> responseStream, ServerCallContext context)
    {
        using var folder = new ScratchFolder();
        var file = folder.File("backup");
        if (!records.Whole.CopyTo(file))
        {
            await using var lines = new StreamWriter(file, append: false, new UTF8Encoding(false)) { NewLine = "\n" };
            records.Whole.Read(row => lines.WriteLine(RecordRows.WriteLine(RecordRows.Write(row))));
        }

        await using var content = File.OpenRead(file);
        var piece = new byte[PieceBytes];
        while (await content.ReadAtLeastAsync(piece, PieceBytes, throwOnEndOfStream: false, context.CancellationToken) is var length and > 0)
        {
            await responseStream.WriteAsync(new BackupPiece { Content = ByteString.CopyFrom(piece, 0, length) }, context.CancellationToken);
        }
    }

    /// <inheritdoc/>
    public override async Task<RestoreRecordsResponse> RestoreRecords(IAsyncStreamReader<RestoreRecordsRequest> requestStream, ServerCallContext context)
    {
        using var folder = new ScratchFolder();
        var file = folder.File("backup");
        var mayReplace = false;
        await using (var content = File.Create(file))
        {
            await foreach (var piece in requestStream.ReadAllAsync(context.CancellationToken))
            {
                mayReplace |= piece.Replace;
                await content.WriteAsync(piece.Content.Memory, context.CancellationToken);
            }
        }

        var rows = ReadBackup(file);
        if (!mayReplace && !records.Whole.IsEmpty)
        {
            throw RichFault.Of(Code.FailedPrecondition, "this kitchen has records, and a backup would take their place; nothing was restored. Back them up first, and say that they may be replaced (records restore FILE --replace)", RichFault.Info(Reason.NotEmpty));
        }

        return new RestoreRecordsResponse { Records = await Replace(rows) };
    }

    private static IReadOnlyList<RecordRow> ReadBackup(string file)
    {
        using var content = File.OpenRead(file);
        Span<byte> head = stackalloc byte[DatabaseFile.Length];
        if (content.ReadAtLeast(head, head.Length, throwOnEndOfStream: false) == head.Length && head.SequenceEqual(DatabaseFile))
        {
            return ReadDatabase(file);
        }

        if (content.Length == 0)
        {
            throw NoBackup("it is empty");
        }

        return [.. File.ReadLines(file).Select((line, index) => Row(Line(line, index + 1), index + 1))];
    }

    private static IReadOnlyList<RecordRow> ReadDatabase(string file)
    {
        try
        {
            return WholeRecords.FindDamage(file) is { Count: > 0 } damage ? throw NoBackup($"it is damaged: {damage[0]}") : WholeRecords.ReadCopy(file);
        }
        catch (RecordsFaultException fault)
        {
            throw NoBackup(fault.InnerException?.Message ?? fault.Message.Replace(file, "the backup", StringComparison.Ordinal));
        }
    }

    private static Record Line(string line, int number)
    {
        try
        {
            return RecordRows.ReadLine(line);
        }
        catch (Exception fault) when (fault is InvalidProtocolBufferException or InvalidJsonException)
        {
            throw NoBackup(string.Create(CultureInfo.InvariantCulture, $"line {number} is no record: {fault.Message}"));
        }
    }

    private static RecordRow Row(Record record, int number)
    {
        try
        {
            return RecordRows.Read(record) ?? throw new FormatException("it says nothing");
        }
        catch (FormatException fault)
        {
            throw NoBackup(string.Create(CultureInfo.InvariantCulture, $"record {number} cannot be: {fault.Message}"));
        }
    }

    /// <summary>What is taken in hangs together, or none of it is taken.</summary>
    private async Task<int> Replace(IReadOnlyList<RecordRow> rows)
    {
        try
        {
            return await records.Whole.ReplaceAsync(rows);
        }
        catch (RecordsFaultException fault) when (fault.IsContradiction)
        {
            throw NoBackup("its records contradict each other, as a revision without its formula or a record that stands there twice");
        }
    }

    private static RpcException NoBackup(string why)
    {
        var problems = new ProblemList();
        problems.Add("records", string.Empty, $"this is no backup or export that can be taken in: {why}; nothing was changed", "give a file that records backup or records export wrote");
        return problems.Refusal();
    }
}
