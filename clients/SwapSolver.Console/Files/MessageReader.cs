using System.Text;
using System.Text.Json;
using Google.Protobuf;

namespace SwapSolver.Console.Files;

/// <summary>Reads a message of the contract from the bytes of its file and names every fault it finds.</summary>
/// <param name="kind">What the file holds.</param>
internal sealed class MessageReader<TMessage>(FileKind kind)
    where TMessage : IMessage<TMessage>, new()
{
    private const int DeepestNesting = 32;

    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    /// <summary>Reads one message.</summary>
    public Checked<TMessage> Read(byte[] bytes)
    {
        var json = bytes.AsMemory(bytes.AsSpan().StartsWith(ByteOrderMark) ? ByteOrderMark.Length : 0);
        var foreign = Utf8Text.FindFault(json.Span);
        if (foreign is not null)
        {
            return Checked<TMessage>.Bad(foreign);
        }

        var problems = FindProblems(json);
        if (problems.Count > 0)
        {
            return Checked<TMessage>.Bad(problems);
        }

        try
        {
            return new JsonParser(new JsonParser.Settings(DeepestNesting)).Parse<TMessage>(Encoding.UTF8.GetString(json.Span));
        }
        catch (Exception fault) when (fault is InvalidProtocolBufferException or InvalidJsonException)
        {
            return Checked<TMessage>.Bad($"this is not a {kind.Name}: {fault.Message}");
        }
    }

    private IReadOnlyList<string> FindProblems(ReadOnlyMemory<byte> json)
    {
        try
        {
            using var document = JsonDocument.Parse(json, new JsonDocumentOptions { MaxDepth = DeepestNesting });
            var check = new MessageCheck();
            check.Message(document.RootElement, new TMessage().Descriptor, path: "");
            return check.Problems;
        }
        catch (JsonException fault)
        {
            return [JsonFault.Describe(fault, json.Span, kind)];
        }
        catch (InvalidOperationException)
        {
            // The one thing that JSON allows and text does not: half of a surrogate pair, as "\ud83d" alone.
            return [$"this is not a {kind.Name}: a \\u escape in it stands for half a character."];
        }
    }
}
