using System.Text.Json;
using System.Text.Json.Serialization;

namespace SwapSolver.Service.Stored;

/// <summary>The goals of a revision, as the records hold them: a list of words in JSON.</summary>
internal static class Goals
{
    /// <summary>The words.</summary>
    public static string[] Read(string document) => JsonSerializer.Deserialize(document, WordsContext.Default.StringArray)!;

    /// <summary>The text of them.</summary>
    public static string Write(IEnumerable<string> goals) => JsonSerializer.Serialize([.. goals], WordsContext.Default.StringArray);
}

/// <summary>Read and written by code that is made when this is built: what is compiled ahead of time can make none.</summary>
[JsonSerializable(typeof(string[]))]
internal sealed partial class WordsContext : JsonSerializerContext;
