using System.Text.Json;
using Google.Protobuf;

namespace SwapSolver.Console.Tests.Running;

/// <summary>What a run left behind.</summary>
internal sealed record Ran(int ExitCode, string Out, string Error)
{
    private static readonly string[] OurInsides = ["\n   at ", "at SwapSolver.", "Exception", ".cs:line", "\u001b"];

    /// <summary>The run ended with this code, and said nothing that only we should see.</summary>
    public Ran Ends(int exitCode)
    {
        Assert.True(ExitCode == exitCode, $"exit code {ExitCode} in place of {exitCode}{Environment.NewLine}{Out}{Environment.NewLine}{Error}{Environment.NewLine}The service that tests share said last: {OneService.Said}");
        Assert.All(OurInsides, inside => Assert.DoesNotContain(inside, Out + Error, StringComparison.Ordinal));
        return this;
    }

    /// <summary>The run was refused with words on standard error that hold all of these, and with nothing on standard output.</summary>
    public void Refuses(params string[] words)
    {
        Ends(2);
        SaysOnlyOnError(words);
    }

    /// <summary>What standard error says besides that an answer takes its time: a busy machine says that too.</summary>
    public string Faults => Error.Replace($"swapsolver: still working; Ctrl-C stops it.{Environment.NewLine}", string.Empty, StringComparison.Ordinal);

    /// <summary>Standard output is empty, and standard error holds all of these words.</summary>
    public void SaysOnlyOnError(params string[] words)
    {
        Assert.Empty(Out);
        Assert.All(words, word => Assert.Contains(word, Error, StringComparison.Ordinal));
    }

    /// <summary>Standard output is the JSON of one message and nothing else, and standard error says no more than how long it takes.</summary>
    public T Read<T>()
        where T : IMessage<T>, new()
    {
        Assert.Empty(Faults);
        using var whole = JsonDocument.Parse(Out);
        Assert.Equal(JsonValueKind.Object, whole.RootElement.ValueKind);
        return JsonParser.Default.Parse<T>(Out);
    }
}
