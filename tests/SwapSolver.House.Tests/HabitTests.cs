using System.Text.RegularExpressions;

namespace SwapSolver.House.Tests;

/// <summary>Habits that keep the house readable.</summary>
public sealed partial class HabitTests
{
    private const int MostLines = 400;

    private static readonly string[] CodeFolders = ["src", "clients", "tests"];

    private static readonly string[] TextPatterns = ["*.cs", "*.csproj", "*.proto", "*.json", "*.md", "*.sh", "*.yaml", "*.yml", "*.csv", "*.txt"];

    private static IEnumerable<string> Code => CodeFolders.SelectMany(folder => SourceTree.Files(folder, "*.cs"));

    private static IEnumerable<string> Texts =>
        CodeFolders.Append("data").Append("protos").Append(".ci").SelectMany(folder => TextPatterns.SelectMany(pattern => SourceTree.Files(folder, pattern)))
            .Concat(Directory.EnumerateFiles(SourceTree.Root).Select(path => Path.GetFileName(path)))
            .Distinct();

    [Fact]
    public void No_file_is_longer_than_a_reader_can_hold() =>
        Assert.DoesNotContain(
            Code.Select(path => (Path: path, Lines: SourceTree.Text(path).Count(letter => letter == '\n'))), file => file.Lines > MostLines);

    [Fact]
    public void Nothing_is_named_for_being_useful_in_general()
    {
        Assert.DoesNotContain(Code, path => Shapeless().IsMatch(Path.GetFileNameWithoutExtension(path)));
        var types = Code.SelectMany(path => Declared().Matches(SourceTree.Text(path)).Select(match => (Path: path, Name: match.Groups[1].Value)));
        Assert.DoesNotContain(types, type => Shapeless().IsMatch(type.Name));
    }

    [Fact]
    public void No_test_is_passed_over() => Assert.DoesNotContain(SourceTree.Files("tests", "*.cs"), path => PassedOver().IsMatch(SourceTree.Text(path)));

    [Fact]
    public void No_test_waits_for_a_span_of_time() => Assert.DoesNotContain(SourceTree.Files("tests", "*.cs"), path => SleepsOnAThread().IsMatch(SourceTree.Text(path)));

    [Fact]
    public void Nothing_is_put_off_in_a_comment() => Assert.DoesNotContain(Code, path => PutOff().IsMatch(SourceTree.Text(path)));

    [Fact]
    public void No_file_knows_whose_machine_it_was_written_on() =>
        Assert.Empty(Texts.SelectMany(path => Machine().Matches(SourceTree.Text(path)).Select(match => $"{path}: {match.Value}")));

    [Fact]
    public void Every_line_ends_as_the_editor_is_told_to() =>
        Assert.DoesNotContain(Code, path => SourceTree.Text(path) is var text && (text.Contains('\r', StringComparison.Ordinal) || text.Contains('\t', StringComparison.Ordinal) || !text.EndsWith('\n')));

    [GeneratedRegex("(Helper|Helpers|Util|Utils|Utility|Manager|Base|Constants|Misc|Common)$")]
    private static partial Regex Shapeless();

    [GeneratedRegex(@"(?m)^\s*(?:public |internal |private |protected |static |sealed |abstract |partial |readonly |file )*(?:class|record struct|record|struct|interface|enum)\s+(\w+)")]
    private static partial Regex Declared();

    [GeneratedRegex(@"\[(Fact|Theory|InlineData)[^\]]*\bSkip\s*=")]
    private static partial Regex PassedOver();

    [GeneratedRegex(@"\bThread\.Sleep\s*\(")]
    private static partial Regex SleepsOnAThread();

    [GeneratedRegex(@"//.*\b(TO[D]O|FIX[M]E|HA[C]K|XX[X])\b")]
    private static partial Regex PutOff();

    [GeneratedRegex(@"(?<![\w.])/(home|Users|root|work|mnt)/\w+|\b[A-Z]:\\\w+")]
    private static partial Regex Machine();
}
