using System.CommandLine;
using System.Text;
using Google.Protobuf;
using Google.Protobuf.WellKnownTypes;
using Grpc.Core;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Files;
using SwapSolver.V1;
using Client = SwapSolver.V1.RecordService.RecordServiceClient;

namespace SwapSolver.Console.Verbs;

/// <summary><c>records</c>: the kitchen's records as a whole.</summary>
internal static class WholeRecords
{
    private const int PieceBytes = 65_536;

    /// <summary>The verb with its own verbs.</summary>
    public static Command Create(Errand errand) =>
        new("records", "The kitchen's records as a whole: to a backup and back, and from one database to another.")
        {
            Out(errand, new VerbCommand("backup", "Writes a copy of the records as they stand at this moment, while others go on writing.", "swapsolver records backup kitchen-backup.db"), BackupAsync),
            Out(errand, new VerbCommand("export", "Writes everything as lines of JSON, the same whatever database holds it.", "swapsolver records export kitchen.jsonl"), ExportAsync),
            Restore(errand),
            Import(errand),
        };

    private static VerbCommand Out(Errand errand, VerbCommand verb, Func<CallInvoker, CallOptions, Stream, CancellationToken, Task> write)
    {
        var file = new Argument<string>("FILE") { Description = "The file to write. One that is there is replaced when the new one is whole." };
        verb.Add(file);
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<Struct>(
                _ => Task.FromResult<Checked<ServiceCall<Struct>>>(Written(parse.GetRequiredValue(file), write, cancel)),
                (screen, written) => screen.Sentence($"Wrote {written.Fields["bytes"].NumberValue:0} bytes to {written.Fields["file"].StringValue}. It holds everything of this kitchen: keep it where only you can read it."),
                _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private static VerbCommand Restore(Errand errand)
    {
        var file = new Argument<string>("FILE") { Description = "A file that records backup or records export wrote." };
        var replace = new Option<bool>("--replace") { Description = "The backup takes the place of what is there. Without it, a kitchen that has records is left as it is." };
        var verb = new VerbCommand("restore", "Puts a backup in the place of all records, whole or not at all.", "swapsolver records restore kitchen-backup.db") { file, replace };
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<RestoreRecordsResponse>(
                async token => (await FileSource.ReadAsync(parse.GetRequiredValue(file), FileKind.Backup, token)).Then(bytes => Restored(bytes, parse.GetValue(replace))),
                (screen, response) => screen.Sentence($"Restored: {response.Records} records."),
                _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private static VerbCommand Import(Errand errand)
    {
        var file = new Argument<string>("FILE") { Description = "A file that records export wrote, or - for standard input." };
        var verb = new VerbCommand("import", "Takes exported records into a kitchen that has none, whole or not at all.", "swapsolver records import kitchen.jsonl") { file };
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<ImportRecordsResponse>(
                async token =>
                {
                    var bytes = await FileSource.ReadAsync(parse.GetRequiredValue(file), FileKind.Backup, token);
                    var records = bytes.IsGood ? Lines(bytes.Value) : Checked<List<Record>>.Bad(bytes.Problems);
                    return records.Then(Imported);
                },
                (screen, response) => screen.Sentence($"Imported {response.Records} records."),
                _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private static ServiceCall<Struct> Written(string file, Func<CallInvoker, CallOptions, Stream, CancellationToken, Task> write, CancellationToken cancel) => async (service, options) =>
    {
        // Beside its place first: what breaks off half way must not stand where a whole backup stood.
        var path = Path.GetFullPath(file);
        var partial = $"{path}.partial";
        try
        {
            var how = new FileStreamOptions { Mode = FileMode.Create, Access = FileAccess.Write };
            if (!OperatingSystem.IsWindows())
            {
                // It holds everything of this kitchen.
                how.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
            }

            var content = new FileStream(partial, how);
            long bytes;
            await using (content)
            {
                await write(service, options, content, cancel);
                content.Flush(flushToDisk: true);
                bytes = content.Length;
            }

            File.Move(partial, path, overwrite: true);
            return new Struct { Fields = { ["file"] = Value.ForString(path), ["bytes"] = Value.ForNumber(bytes) } };
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            File.Delete(partial);
            throw new RpcException(new Status(StatusCode.InvalidArgument, $"'{path}' cannot be written: {fault.Message} Give another file."));
        }
    };

    private static async Task BackupAsync(CallInvoker service, CallOptions options, Stream content, CancellationToken cancel)
    {
        using var call = new Client(service).BackupRecords(new BackupRecordsRequest(), options);
        await foreach (var piece in call.ResponseStream.ReadAllAsync(cancel))
        {
            await content.WriteAsync(piece.Content.Memory, cancel);
        }
    }

    private static async Task ExportAsync(CallInvoker service, CallOptions options, Stream content, CancellationToken cancel)
    {
        using var call = new Client(service).ExportRecords(new ExportRecordsRequest(), options);
        await foreach (var record in call.ResponseStream.ReadAllAsync(cancel))
        {
            await content.WriteAsync(Encoding.UTF8.GetBytes(JsonFormatter.Default.Format(record) + "\n"), cancel);
        }
    }

    private static ServiceCall<RestoreRecordsResponse> Restored(byte[] bytes, bool replace) => async (service, options) =>
    {
        using var call = new Client(service).RestoreRecords(options);
        for (var place = 0; place < bytes.Length; place += PieceBytes)
        {
            var length = Math.Min(PieceBytes, bytes.Length - place);
            await call.RequestStream.WriteAsync(new RestoreRecordsRequest { Content = ByteString.CopyFrom(bytes, place, length), Replace = replace });
        }

        await call.RequestStream.CompleteAsync();
        return await call;
    };

    private static ServiceCall<ImportRecordsResponse> Imported(List<Record> records) => async (service, options) =>
    {
        using var call = new Client(service).ImportRecords(options);
        foreach (var record in records)
        {
            await call.RequestStream.WriteAsync(new ImportRecordsRequest { Record = record });
        }

        await call.RequestStream.CompleteAsync();
        return await call;
    };

    private static Checked<List<Record>> Lines(byte[] bytes)
    {
        var records = new List<Record>();
        foreach (var (line, place) in Encoding.UTF8.GetString(bytes).Split('\n').Select((line, place) => (line, place)).Where(pair => pair.line.Trim().Length > 0))
        {
            try
            {
                records.Add(JsonParser.Default.Parse<Record>(line));
            }
            catch (Exception fault) when (fault is InvalidProtocolBufferException or InvalidJsonException)
            {
                return Checked<List<Record>>.Bad($"line {place + 1} is no record: {fault.Message}");
            }
        }

        return records;
    }
}
