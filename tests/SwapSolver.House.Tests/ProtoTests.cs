using System.Text.RegularExpressions;

namespace SwapSolver.House.Tests;

/// <summary>The protos are the promise: nothing in them goes without a word of what it means.</summary>
public sealed partial class ProtoTests
{
    public static TheoryData<string> Protos => [.. SourceTree.Files("protos", "*.proto")];

    [Theory]
    [MemberData(nameof(Protos))]
    public void Everything_that_is_promised_is_explained(string path)
    {
        var lines = SourceTree.Text(path).Split('\n').Select(line => line.Trim()).ToList();
        var bare = Enumerable.Range(1, lines.Count - 1)
            .Where(index => Promise().IsMatch(lines[index]) && !lines[index - 1].StartsWith("//", StringComparison.Ordinal))
            .Select(index => $"{path}:{index + 1} {lines[index]}");
        Assert.Empty(bare);
        Assert.StartsWith("//", lines[0], StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Protos))]
    public void A_file_of_questions_holds_one_service_that_it_is_named_for(string path)
    {
        var services = Service().Matches(SourceTree.Text(path)).Select(match => match.Groups[1].Value).ToList();
        if (!path.EndsWith("_service.proto", StringComparison.Ordinal))
        {
            Assert.Empty(services);
            return;
        }

        var name = Path.GetFileNameWithoutExtension(path).Replace("_", string.Empty, StringComparison.Ordinal);
        Assert.Equal(name, Assert.Single(services), ignoreCase: true);
    }

    [Theory]
    [MemberData(nameof(Protos))]
    public void No_number_is_too_wide_for_a_script(string path) =>
        // A 64-bit integer is a string in one JSON and a number in another (contract: no 64-bit integers).
        Assert.DoesNotMatch(@"\b(u?int64|s?fixed64|sint64)\b", SourceTree.Text(path));

    [Fact]
    public void Every_question_is_asked_in_the_tests_of_the_service()
    {
        var questions = SourceTree.Files("protos", "*.proto").SelectMany(path => Question().Matches(SourceTree.Text(path)).Select(match => match.Groups[1].Value)).ToList();
        var tests = string.Concat(SourceTree.Files("tests/SwapSolver.Service.Tests", "*.cs").Select(SourceTree.Text));
        Assert.NotEmpty(questions);
        // A question that is answered piece by piece has no such suffix.
        Assert.All(questions, question => Assert.Matches($@"\b{question}(Async)?\(", tests));
    }

    [GeneratedRegex(@"^(service|message|enum|oneof|rpc)\s+\w+|^[\w.<>, ]+\s\w+\s*=\s*\d+\s*(\[.*)?;|^[A-Z0-9_]+\s*=\s*\d+;")]
    private static partial Regex Promise();

    [GeneratedRegex(@"(?m)^service\s+(\w+)")]
    private static partial Regex Service();

    [GeneratedRegex(@"\brpc\s+(\w+)\s*\(")]
    private static partial Regex Question();
}
