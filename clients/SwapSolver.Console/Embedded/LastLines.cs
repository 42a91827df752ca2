namespace SwapSolver.Console.Embedded;

/// <summary>Reads a stream to its end and keeps its last lines.</summary>
internal static class LastLines
{
    private const int MostLines = 12;

    /// <summary>The last lines of a stream, once it has ended.</summary>
    public static async Task<IReadOnlyList<string>> ReadAsync(StreamReader reader)
    {
        var kept = new Queue<string>();
        while (await reader.ReadLineAsync() is { } line)
        {
            kept.Enqueue(line);
            if (kept.Count > MostLines)
            {
                kept.Dequeue();
            }
        }

        return [.. kept];
    }
}
