using System.Collections.Immutable;
using System.Diagnostics;
using System.Text.Json;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Cards.Tests.Judged;

/// <summary>Cards printed once and judged once, by the programs of <c>tests/card-checks</c>: one browser for all.</summary>
public sealed class JudgedCards : IAsyncLifetime
{
    public const string Name = "judged cards";

    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(10);

    private static readonly ImmutableArray<string> Hostile =
    [
        "<script>alert(1)</script>", "\"><img src=x onerror=alert(1)>", "</style></script><svg onload=alert(1)>", new('x', 500), "\u202Eloaf\u202C and more",
        "\u0627\u0644\u062E\u0628\u0632 \u0628\u0627\u0644\u0644\u0648\u0632", string.Join(' ', Enumerable.Repeat("word", 100)),
    ];

    private static readonly Formula Walnut = Loaf.Walnut with
    {
        DisplayName = "Walnut loaf",
        Description = "An invented loaf.",
        BakeLoss = new Percent(11),
        Oven = new Oven(new Celsius(175), false),
        Shape = new Tin(new Millimetres(215), new Millimetres(110), new Millimetres(65)),
        Steps = ["Heat the oven to 175 °C.", "Bake to a core of 96 °C."],
    };

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("judged-cards-");

    private JsonDocument? found;

    /// <summary>The names of the printed cards, by what is on them.</summary>
    public static IEnumerable<string> Cards =>
    [
        .. TestLabels.Laws.All.Select(law => $"walnut-{law.Id}"), "bare", "muffins", .. Hostile.Select((_, place) => $"hostile-{place}"), .. Snapshots.Select(path => Path.GetFileNameWithoutExtension(path)),
    ];

    /// <summary>The shipped cards of the demo formulas.</summary>
    private static string[] Snapshots => Directory.GetFiles(Path.Combine(TestKitchen.Folder.Path, "cards"), "*.html");

    /// <summary>What was found of a file.</summary>
    public JsonElement Of(string file) => found!.RootElement.GetProperty(file);

    /// <summary>The size of a picture that was taken of a card [bytes].</summary>
    public long Picture(string card, int width) => new FileInfo(Path.Combine(folder.FullName, $"{card}.html.{width}.png")).Length;

    /// <summary>The name that a hostile card bears.</summary>
    public static string HostileName(int place) => Hostile[place];

    public async Task InitializeAsync()
    {
        foreach (var law in TestLabels.Laws.All)
        {
            Print($"walnut-{law.Id}", TestCards.Of(Walnut, law.Id, MeasureSystem.Metric, pictures: law.Id == "us"));
        }

        Print("bare", TestCards.Of(Bowl.Of(("water", 100), ("salt", 1))));
        Print("muffins", TestCards.Of(Loaf.Muffins, "eu", MeasureSystem.UkImperial, "de-DE", pictures: true));
        for (var place = 0; place < Hostile.Length; place++)
        {
            var name = Hostile[place];
            Print($"hostile-{place}", TestCards.Of(Walnut with { DisplayName = name, Description = name, Steps = [name] }, version: name[..Math.Min(100, name.Length)]));
        }

        foreach (var snapshot in Snapshots.Concat(Directory.GetFiles(Path.Combine(TestKitchen.Folder.Path, "cards"), "*.jsonld")))
        {
            File.Copy(snapshot, Path.Combine(folder.FullName, Path.GetFileName(snapshot)));
        }

        Write("spoilt.html", "<!DOCTYPE html><html><head></head><body><h1>Spoilt</h1><h1 style='width:900px;color:#999;background:#aaa'>Twice<img src='http://192.0.2.1/x.png'></h1><script>alert(1)</script></body></html>");
        Write("spoilt.jsonld", """{ "@context": "https://schema.org", "@type": "Recipe", "oven": "hot", "nutrition": { "@type": "HowToStep", "text": "none" } }""");
        found = JsonDocument.Parse(await Judge());
    }

    public Task DisposeAsync()
    {
        found?.Dispose();
        folder.Delete(recursive: true);
        return Task.CompletedTask;
    }

    private void Print(string name, Card card)
    {
        Write($"{name}.html", TestCards.Printer.Html(card));
        Write($"{name}.jsonld", TestCards.Printer.LinkedData(card));
    }

    private void Write(string name, string text) => File.WriteAllText(Path.Combine(folder.FullName, name), text);

    private async Task<string> Judge()
    {
        using var judge = Process.Start(new ProcessStartInfo("node", [Path.Combine(Root(), "tests", "card-checks", "check.mjs"), folder.FullName])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = System.Text.Encoding.UTF8,
        })!;
        var (output, error) = (judge.StandardOutput.ReadToEndAsync(), judge.StandardError.ReadToEndAsync());
        try
        {
            await judge.WaitForExitAsync().WaitAsync(Patience);
        }
        catch (TimeoutException)
        {
            judge.Kill(entireProcessTree: true);
            throw;
        }

        return judge.ExitCode == 0 ? await output : throw new InvalidOperationException($"the judges of cards failed: {await error}");
    }

    private static string Root()
    {
        var place = new DirectoryInfo(AppContext.BaseDirectory);
        while (place is not null && !File.Exists(Path.Combine(place.FullName, "SwapSolver.sln")))
        {
            place = place.Parent;
        }

        return place?.FullName ?? throw new InvalidOperationException("no SwapSolver.sln above these tests");
    }
}

[CollectionDefinition(JudgedCards.Name)]
public sealed class JudgedCardsTests : ICollectionFixture<JudgedCards>;
