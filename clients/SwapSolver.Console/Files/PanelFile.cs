using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using SwapSolver.V1;

namespace SwapSolver.Console.Files;

/// <summary>Reads the panel of a packet from a file. Its figures are texts in the contract, since '5' and '5.0' are rounded
/// differently; a number in the file keeps the digits that it was written with.</summary>
internal static class PanelFile
{
    private static readonly MessageReader<NutritionPanel> Reader = new(FileKind.Panel);

    /// <summary>The panel, or what is wrong with the file.</summary>
    public static async Task<Checked<NutritionPanel>> ReadAsync(string path, CancellationToken cancel)
    {
        var bytes = await FileSource.ReadAsync(path, FileKind.Panel, cancel);
        var panel = bytes.IsGood ? Reader.Read(WithTexts(bytes.Value)) : Checked<NutritionPanel>.Bad(bytes.Problems);
        return panel.IsGood ? panel : Checked<NutritionPanel>.Bad([.. panel.Problems.Select(problem => $"{FileSource.PlaceOf(path)}: {problem}")]);
    }

    private static byte[] WithTexts(byte[] json)
    {
        try
        {
            if (JsonNode.Parse(json) is not JsonObject panel)
            {
                return json;
            }

            foreach (var (name, value) in panel.ToList().Where(pair => pair.Value?.GetValueKind() == JsonValueKind.Number))
            {
                panel[name] = value!.ToJsonString();
            }

            return Encoding.UTF8.GetBytes(panel.ToJsonString());
        }
        catch (Exception fault) when (fault is JsonException or ArgumentException or InvalidOperationException)
        {
            // What is no object, or names a line twice, is the reader's to refuse, with its place.
            return json;
        }
    }
}
