using System.Text;
using System.Text.Json;
using Google.Protobuf;
using SwapSolver.V1;

namespace SwapSolver.Console.FormulaFiles;

/// <summary>Reads a formula from the bytes of its file and names every fault it finds.</summary>
internal static class FormulaReader
{
    private const int DeepestNesting = 32;

    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    /// <summary>Reads one formula.</summary>
    public static Checked<Formula> Read(byte[] bytes)
    {
        var json = bytes.AsMemory(bytes.AsSpan().StartsWith(ByteOrderMark) ? ByteOrderMark.Length : 0);
        var foreign = Utf8Text.FindFault(json.Span);
        if (foreign is not null)
        {
            return Checked<Formula>.Bad(foreign);
        }

        var problems = FindProblems(json);
        if (problems.Count > 0)
        {
            return Checked<Formula>.Bad(problems);
        }

        try
        {
            return new JsonParser(new JsonParser.Settings(DeepestNesting)).Parse<Formula>(Encoding.UTF8.GetString(json.Span));
        }
        catch (Exception fault) when (fault is InvalidProtocolBufferException or InvalidJsonException)
        {
            return Checked<Formula>.Bad($"this is not a formula: {fault.Message}");
        }
    }

    private static IReadOnlyList<string> FindProblems(ReadOnlyMemory<byte> json)
    {
        try
        {
            using var document = JsonDocument.Parse(json, new JsonDocumentOptions { MaxDepth = DeepestNesting });
            var check = new MessageCheck();
            check.Message(document.RootElement, Formula.Descriptor, path: "");
            return check.Problems;
        }
        catch (JsonException fault)
        {
            return [JsonFault.Describe(fault, json.Span)];
        }
        catch (InvalidOperationException)
        {
            // The one thing that JSON allows and text does not: half of a surrogate pair, as "\ud83d" alone.
            return ["this is not a formula: a \\u escape in it stands for half a character."];
        }
    }
}
