using System.Diagnostics;
using System.Text.Json;

namespace SwapSolver.Benchmarks.Load;

/// <summary>How soon the pages can be used in a browser on a slowed processor, in turn with a fixed script on the same (<c>tests/web/measure.mjs</c>).</summary>
internal static class Pages
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(20);

    /// <summary>Runs it, from the root of the sources, where the pages were built.</summary>
    /// <param name="rounds">How often each page is opened.</param>
    public static async Task<int> Run(int rounds)
    {
        await using var service = await ServiceProcess.Start();
        using var measured = JsonDocument.Parse(await Measure(service, rounds));
        var found = new List<Found> { Found.Told("each page is opened", $"{rounds} times") };
        foreach (var page in measured.RootElement.GetProperty("pages").EnumerateObject())
        {
            var (usable, script) = (Times(page.Value.GetProperty("usable")), Times(page.Value.GetProperty("script")));
            found.Add(Found.AtMost($"{page.Name} can be used, on a processor slowed to a quarter, median [ms]", usable.At(0.5).TotalMilliseconds, 1500));
            found.Add(Found.Told("soonest and latest", $"{usable.Min().TotalMilliseconds:0} and {usable.Max().TotalMilliseconds:0} ms"));
            found.Add(Found.Told("beside a fixed script in the same browser, slowed the same", $"{usable.At(0.5) / script.At(0.5):0.0}"));
        }

        var typing = Times(measured.RootElement.GetProperty("typing"));
        found.Add(Found.AtMost("from typing grams to their readings, not slowed, median [ms]", typing.At(0.5).TotalMilliseconds, 100));
        return LoadPage.Write("The pages on a slow processor", found);
    }

    private static List<TimeSpan> Times(JsonElement times) =>
        [.. times.EnumerateArray().Select(time => TimeSpan.FromMilliseconds(time.GetDouble()))];

    private static async Task<string> Measure(ServiceProcess service, int rounds)
    {
        using var browser = Process.Start(new ProcessStartInfo("node", ["tests/web/measure.mjs", $"{rounds}"])
        {
            RedirectStandardOutput = true,
            Environment = { ["PAGES_BASE"] = service.HttpAddress.ToString(), ["PAGES_OWNER"] = service.Key },
        })!;
        var output = browser.StandardOutput.ReadToEndAsync();
        try
        {
            await browser.WaitForExitAsync().WaitAsync(Patience);
        }
        catch (TimeoutException)
        {
            browser.Kill(entireProcessTree: true);
            throw;
        }

        return browser.ExitCode == 0 ? await output : throw new InvalidOperationException("the browser failed: what it said stands above");
    }
}
