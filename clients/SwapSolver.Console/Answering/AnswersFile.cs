using Google.Protobuf;
using SwapSolver.Console.Asking;
using SwapSolver.V1;

namespace SwapSolver.Console.Answering;

/// <summary>The answers that are written, a line each. What an earlier run wrote stays; a last line that it did not finish
/// is taken away.</summary>
internal sealed class AnswersFile : IDisposable
{
    private static readonly JsonParser Parser = new(JsonParser.Settings.Default.WithIgnoreUnknownFields(true));

    private readonly FileStream stream;

    private readonly StreamReader earlier;

    private AnswersFile(FileStream stream)
    {
        this.stream = stream;
        earlier = new StreamReader(stream, leaveOpen: true);
    }

    /// <summary>Opens the file, new or with what it holds; or says why it cannot be written.</summary>
    public static Checked<AnswersFile> Open(string path)
    {
        try
        {
            var stream = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.Read);
            CutLastLine(stream);
            stream.Position = 0;
            return new AnswersFile(stream);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Checked<AnswersFile>.Bad($"{path}: this file cannot be written: {fault.Message}");
        }
    }

    /// <summary>The next answer that an earlier run wrote; null where there are no more.</summary>
    /// <exception cref="InvalidDataException">The line is no answer.</exception>
    public async Task<AnswerQuestionResponse?> NextAsync(CancellationToken cancel)
    {
        if (await earlier.ReadLineAsync(cancel) is not { } line)
        {
            return null;
        }

        try
        {
            return Parser.Parse<AnswerQuestionResponse>(line);
        }
        catch (InvalidProtocolBufferException fault)
        {
            throw new InvalidDataException($"a line of the file is no answer: {fault.Message}", fault);
        }
    }

    /// <summary>Writes an answer behind the last.</summary>
    public void Add(AnswerQuestionResponse answer)
    {
        stream.Position = stream.Length;
        stream.Write(System.Text.Encoding.UTF8.GetBytes(JsonOutput.Line(answer)));
        stream.Flush();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        earlier.Dispose();
        stream.Dispose();
    }

    private static void CutLastLine(FileStream stream)
    {
        for (var end = stream.Length; end > 0; end--)
        {
            stream.Position = end - 1;
            if (stream.ReadByte() == '\n')
            {
                stream.SetLength(end);
                return;
            }
        }

        stream.SetLength(0);
    }
}
