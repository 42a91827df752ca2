using System.Diagnostics;
using System.Text.Json;

namespace SwapSolver.Web.Tests;

/// <summary>Every journey of <c>tests/web</c>, walked once in one browser against one service.</summary>
public sealed class WalkedJourneys : IAsyncLifetime
{
    public const string Name = "walked journeys";

    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(30);

    private readonly DirectoryInfo pictures = Directory.CreateTempSubdirectory("page-pictures-");

    private JsonDocument? walked;

    /// <summary>The sentences of all journeys that were walked.</summary>
    public IEnumerable<string> Sentences => walked!.RootElement.EnumerateObject().Select(journey => journey.Name);

    /// <summary>What came of a journey.</summary>
    public JsonElement Of(string sentence) =>
        walked!.RootElement.TryGetProperty(sentence, out var found) ? found : throw new InvalidOperationException($"nobody walked '{sentence}'");

    /// <summary>Size of the picture that was taken at the end of each journey [bytes].</summary>
    public IReadOnlyList<long> Pictures => [.. pictures.EnumerateFiles("*.png").Select(file => file.Length)];

    public async Task InitializeAsync()
    {
        await using var pages = await RunningPages.Start();
        walked = JsonDocument.Parse(await Walk(pages));
    }

    public Task DisposeAsync()
    {
        walked?.Dispose();
        pictures.Delete(recursive: true);
        return Task.CompletedTask;
    }

    private async Task<string> Walk(RunningPages pages)
    {
        using var walker = Process.Start(new ProcessStartInfo("node", [Path.Combine(Repository.Root, "tests", "web", "walk.mjs"), pictures.FullName])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = System.Text.Encoding.UTF8,
            Environment =
            {
                ["PAGES_BASE"] = pages.Address.ToString(),
                ["PAGES_GRPC"] = pages.GrpcAddress.ToString(),
                ["PAGES_CONSOLE"] = RunningPages.Console,
                ["PAGES_OWNER"] = pages.Owner,
                ["PAGES_READER"] = pages.Reader,
            },
        })!;
        var (output, error) = (walker.StandardOutput.ReadToEndAsync(), walker.StandardError.ReadToEndAsync());
        try
        {
            await walker.WaitForExitAsync().WaitAsync(Patience);
        }
        catch (TimeoutException)
        {
            walker.Kill(entireProcessTree: true);
            throw;
        }

        return walker.ExitCode == 0 ? await output : throw new InvalidOperationException($"the journeys ended early: {await error}");
    }
}

[CollectionDefinition(WalkedJourneys.Name)]
public sealed class WalkedJourneysTests : ICollectionFixture<WalkedJourneys>;
