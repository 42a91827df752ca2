using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;

namespace SwapSolver.House.Tests;

/// <summary>A guide whose commands are not run rots. What README and TOUR show is run, and what it prints and draws is compared.</summary>
public sealed partial class GuideTests
{
    private const string RunFromSource = "dotnet run --project clients/SwapSolver.Console -- ";

    private const string Program = "swapsolver ";

    private const string Drawn = "docs/tour";

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(90);

    /// <summary>Consoles that run at a time: each waits for its own service to start.</summary>
    private static readonly ParallelOptions TwoAtATime = new() { MaxDegreeOfParallelism = 2 };

    [Theory]
    [InlineData("README.md")]
    [InlineData("TOUR.md")]
    public void A_guide_shows_a_command_and_its_answer(string guide) =>
        Assert.Contains(Commands(guide), command => command.Printed is not null);

    [Fact]
    public void Whatever_lies_beside_the_tour_is_shown_in_it() => Assert.All(
        SourceTree.Files(Drawn, "*"),
        path => Assert.Contains(path, SourceTree.Text("TOUR.md"), StringComparison.Ordinal));

    [Fact]
    public void The_projects_and_scripts_that_the_developers_guide_names_are_there() =>
        Assert.All(
            PathInGuide().Matches(SourceTree.Text("DEVELOPERS.md")).Select(match => match.Value),
            path => Assert.True(Path.Exists(SourceTree.At(path)), $"DEVELOPERS.md names {path}, which is not there"));

    [Theory]
    [InlineData("README.md")]
    [InlineData("TOUR.md")]
    public Task Every_command_of_a_guide_prints_and_draws_what_it_says(string guide) =>
        Parallel.ForEachAsync(Commands(guide), TwoAtATime, async (shown, _) =>
        {
            var (command, printed) = shown;
            // What a guide has drawn stands beside it; here it is drawn elsewhere, and held against that.
            var kept = Kept().Match(command).Groups[1].Value;
            var drawn = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}-{Path.GetFileName(kept)}");
            var (exitCode, output, error) = await Run(kept.Length > 0 ? command.Replace(kept, drawn, StringComparison.Ordinal) : command);
            // 1 is an answer too: 'no'.
            Assert.True(exitCode is 0 or 1, $"{guide}: {command}{Environment.NewLine}ended with {exitCode}: {error}");
            if (printed is not null)
            {
                Assert.Equal(Lines(printed), Lines(output));
            }

            if (kept.Length > 0)
            {
                var now = File.ReadAllText(drawn);
                File.Delete(drawn);
                Assert.Equal(SourceTree.Text(kept), now);
            }
        });

    [Fact]
    public void The_rule_that_the_guide_shows_is_the_rule_of_the_kitchen()
    {
        var shown = Blocks("DEVELOPERS.md").Where(block => block.Kind == "csharp").Select(block => block.Text).ToList();
        Assert.NotEmpty(shown);
        Assert.All(shown, text =>
        {
            var file = Assert.Single(SourceTree.Files("src", $"{Rule().Match(text).Groups[1].Value}.cs"));
            Assert.Equal(Code(text), Code(SourceTree.Text(file)));
        });
    }

    /// <summary>The lines that a compiler reads between the braces of a namespace: no comments, no usings, no blanks.</summary>
    private static List<string> Code(string text) =>
    [
        .. text.Split('\n').Select(line => line.Trim())
            .Where(line => line.Length > 0 && !line.StartsWith("//", StringComparison.Ordinal))
            .Where(line => !line.StartsWith("using ", StringComparison.Ordinal) && !line.StartsWith("namespace ", StringComparison.Ordinal)),
    ];

    private static List<(string Kind, string Text)> Blocks(string guide)
    {
        Assert.True(File.Exists(SourceTree.At(guide)), $"{guide} is missing");
        return [.. Block().Matches(SourceTree.Text(guide)).Select(match => (match.Groups[1].Value, match.Groups[2].Value))];
    }

    /// <summary>The console commands of a guide, each with the text block that follows its own block; null where another block or none follows.</summary>
    private static List<(string Command, string? Printed)> Commands(string guide)
    {
        var blocks = Blocks(guide);
        var commands = new List<(string, string?)>();
        for (var index = 0; index < blocks.Count; index++)
        {
            if (blocks[index].Kind != "sh")
            {
                continue;
            }

            var ours = Continued().Replace(blocks[index].Text, " ").Split('\n').Select(line => line.Trim())
                .Where(line => line.StartsWith(Program, StringComparison.Ordinal) || line.StartsWith(RunFromSource, StringComparison.Ordinal))
                .ToList();
            var printed = index + 1 < blocks.Count && blocks[index + 1].Kind == "text" ? blocks[index + 1].Text : null;
            // What is printed under several commands is printed by the last of them.
            commands.AddRange(ours.Select((command, place) => (command, place == ours.Count - 1 ? printed : null)));
        }

        return commands;
    }

    private static IReadOnlyList<string> Lines(string text) => [.. text.TrimEnd().Split('\n').Select(line => line.TrimEnd())];

    /// <summary>Runs a command line as the shell does, with the console that was built beside these tests.</summary>
    private static async Task<(int ExitCode, string Out, string Error)> Run(string command)
    {
        var configuration = Directory.GetParent(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar))!.Name;
        var folder = SourceTree.At($"clients/SwapSolver.Console/bin/{configuration}/net10.0");
        Assert.True(File.Exists(Path.Combine(folder, "swapsolver")), $"no console is built in {folder}");
        var line = command.StartsWith(RunFromSource, StringComparison.Ordinal) ? Program + command[RunFromSource.Length..] : command;
        var start = new ProcessStartInfo("bash", ["-c", line])
        {
            WorkingDirectory = SourceTree.Root,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
        };
        start.Environment["PATH"] = $"{folder}{Path.PathSeparator}{Environment.GetEnvironmentVariable("PATH")}";
        // What a developer's own kitchen wrote down must not move the guide.
        start.Environment["XDG_DATA_HOME"] = Path.Combine(folder, "no-records");
        using var process = Process.Start(start)!;
        process.StandardInput.Close();
        var output = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync().WaitAsync(Patience);
        return (process.ExitCode, await output, await error);
    }

    [GeneratedRegex(@"(?ms)^```(\w*)[^\n]*\n(.*?)^```\s*$")]
    private static partial Regex Block();

    [GeneratedRegex($@"--out ({Drawn}/\S+)")]
    private static partial Regex Kept();

    [GeneratedRegex(@"\brecord (\w+)\(")]
    private static partial Regex Rule();

    [GeneratedRegex(@"\\\n\s*")]
    private static partial Regex Continued();

    [GeneratedRegex(@"(src|clients|tests|protos|data|docs)/[A-Za-z0-9_./-]*[A-Za-z0-9_-]")]
    private static partial Regex PathInGuide();
}
