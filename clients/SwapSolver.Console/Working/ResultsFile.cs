using System.Text;
using Google.Protobuf;
using SwapSolver.Console.Asking;
using SwapSolver.V1;

namespace SwapSolver.Console.Working;

/// <summary>Results of a job in a file, a line each. What an earlier call wrote stays; a last line that it did not finish is taken
/// away, and the last that is whole says where to go on.</summary>
internal sealed class ResultsFile : IDisposable
{
    private static readonly JsonParser Parser = new(JsonParser.Settings.Default.WithIgnoreUnknownFields(true));

    private readonly FileStream stream;

    private ResultsFile(FileStream stream, int last)
    {
        this.stream = stream;
        Last = last;
    }

    /// <summary>Place of the last result in it; 0 where there is none.</summary>
    public int Last { get; private set; }

    /// <summary>Does something with the file of results that was asked for, and closes it; says why where it cannot be written.</summary>
    /// <param name="path">The file; null where none was asked for.</param>
    /// <param name="job">Resource name of the job whose results it is to hold.</param>
    /// <param name="work">What is done, with null where no file was asked for.</param>
    /// <returns>The exit code.</returns>
    public static async Task<int> WithAsync(string? path, string job, Func<ResultsFile?, Task<int>> work)
    {
        if (path is null)
        {
            return await work(null);
        }

        var opened = Open(path, job);
        if (!opened.IsGood)
        {
            ProblemList.Write(opened.Problems);
            return ExitCode.BadInput;
        }

        using var file = opened.Value;
        return await work(file);
    }

    /// <summary>Opens the file, new or with what it holds; or says why it cannot be written.</summary>
    /// <param name="path">The file.</param>
    /// <param name="job">Resource name of the job whose results it is to hold.</param>
    public static Checked<ResultsFile> Open(string path, string job)
    {
        try
        {
            var stream = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.Read);
            var line = LastLine(stream);
            if (line.Length == 0)
            {
                return new ResultsFile(stream, 0);
            }

            var last = Read(line);
            if (last is null || !last.Name.StartsWith($"{job}/", StringComparison.Ordinal))
            {
                stream.Dispose();
                return Checked<ResultsFile>.Bad($"{path}: this file holds something else than results of {job}. Give another --out, or move it away.");
            }

            return new ResultsFile(stream, last.Place);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Checked<ResultsFile>.Bad($"{path}: this file cannot be written: {fault.Message}");
        }
    }

    /// <summary>Writes results behind the last.</summary>
    public void Add(IEnumerable<JobItem> items)
    {
        stream.Position = stream.Length;
        foreach (var item in items)
        {
            stream.Write(Encoding.UTF8.GetBytes(JsonOutput.Line(item)));
            Last = item.Place;
        }

        stream.Flush();
    }

    /// <inheritdoc/>
    public void Dispose() => stream.Dispose();

    private static JobItem? Read(string line)
    {
        try
        {
            return Parser.Parse<JobItem>(line);
        }
        catch (InvalidProtocolBufferException)
        {
            return null;
        }
    }

    /// <summary>The last whole line; what stands behind it is cut off.</summary>
    private static string LastLine(FileStream stream)
    {
        var end = Break(stream, stream.Length);
        stream.SetLength(end);
        var start = Break(stream, end - 1);
        var line = new byte[Math.Max(0, end - start)];
        stream.Position = start;
        stream.ReadExactly(line);
        return Encoding.UTF8.GetString(line).Trim();
    }

    /// <summary>The place behind the last line break before a place; 0 where there is none.</summary>
    private static long Break(FileStream stream, long before)
    {
        for (var place = before; place > 0; place--)
        {
            stream.Position = place - 1;
            if (stream.ReadByte() == '\n')
            {
                return place;
            }
        }

        return 0;
    }
}
