using System.Text.RegularExpressions;
using Google.Api;
using Google.Protobuf.Reflection;

namespace SwapSolver.House.Tests;

/// <summary>Rules of form that the protos keep, as the usual linters have them: a generated client in any language then has names
/// that it expects.</summary>
public sealed partial class ContractLintTests
{
    private const string Package = "swapsolver.v1";

    private static readonly IReadOnlyList<FileDescriptorProto> Files = [.. DescribedContract.Now.File.Where(file => file.Package == Package)];

    [Fact]
    public void A_file_lies_in_the_folder_of_its_package() =>
        Assert.All(DescribedContract.Now.File.Where(file => file.Name.StartsWith("swapsolver/", StringComparison.Ordinal)), file =>
        {
            Assert.Equal(Package, file.Package);
            Assert.Equal("swapsolver/v1", Path.GetDirectoryName(file.Name));
            Assert.Matches("^[a-z][a-z0-9_]*\\.proto$", Path.GetFileName(file.Name));
            Assert.Equal("proto3", file.Syntax);
            Assert.Equal("SwapSolver.V1", file.Options.CsharpNamespace);
        });

    [Fact]
    public void Messages_enums_services_and_methods_are_written_in_capitals_of_words()
    {
        Assert.NotEmpty(Files);
        Assert.All(Messages(), message => Assert.Matches(CapitalWords(), message.Name));
        Assert.All(Enums(), one => Assert.Matches(CapitalWords(), one.Name));
        Assert.All(Files.SelectMany(file => file.Service), service => Assert.Matches("^[A-Z][A-Za-z0-9]*Service$", service.Name));
        Assert.All(Methods(), method => Assert.Matches(CapitalWords(), method.Name));
    }

    [Fact]
    public void Fields_are_small_words_with_strokes_and_their_json_name_follows() =>
        Assert.All(Messages().SelectMany(message => message.Field), field =>
        {
            Assert.Matches("^[a-z][a-z0-9]*(_[a-z0-9]+)*$", field.Name);
            Assert.Equal(SmallStart(field.Name), field.JsonName);
        });

    [Fact]
    public void The_first_word_of_an_enum_says_nothing() =>
        Assert.All(Enums(), one =>
        {
            Assert.Equal(0, one.Value[0].Number);
            Assert.EndsWith("UNSPECIFIED", one.Value[0].Name, StringComparison.Ordinal);
            Assert.All(one.Value, value => Assert.Matches("^[A-Z][A-Z0-9]*(_[A-Z0-9]+)*$", value.Name));
            Assert.False(one.Options?.AllowAlias ?? false);
        });

    [Fact]
    public void A_method_takes_a_request_of_its_own()
    {
        Assert.All(Methods().Where(method => !IsStreamOfAnother(method)), method => Assert.Equal($".{Package}.{method.Name}Request", method.InputType));
        Assert.Equal(
            Methods().Count(method => !IsStreamOfAnother(method)), Methods().Where(method => !IsStreamOfAnother(method)).Select(method => method.InputType).Distinct().Count());
    }

    [Fact]
    public void A_method_gives_an_answer_of_its_own_or_the_resource_that_it_is_about() =>
        Assert.All(Methods(), method => Assert.True(
            method.OutputType == $".{Package}.{method.Name}Response"
            || IsStreamOfAnother(method)
            || method.OutputType == ".google.protobuf.Empty"
            || method.OutputType.StartsWith($".{Package}.", StringComparison.Ordinal) && !method.OutputType.EndsWith("Response", StringComparison.Ordinal),
            $"{method.Name} gives {method.OutputType}"));

    /// <summary>But for the records as a whole: they are moved piece by piece, which a plain HTTP client cannot do both ways.</summary>
    [Fact]
    public void Every_method_is_there_over_http_too() =>
        Assert.All(Files.SelectMany(file => file.Service).Where(service => service.Name != "RecordService").SelectMany(service => service.Method).Where(method => !IsStreamOfAnother(method)), method =>
            Assert.True(method.Options?.HasExtension(AnnotationsExtensions.Http) ?? false, $"{method.Name} has no path"));

    [Fact]
    public void A_list_is_asked_for_in_pages() =>
        Assert.All(Methods().Where(method => method.Name.StartsWith("List", StringComparison.Ordinal)), method =>
        {
            var (request, answer) = (Message($"{method.Name}Request"), Message($"{method.Name}Response"));
            Assert.Contains(request.Field, field => field.Name == "page_size");
            Assert.Contains(request.Field, field => field.Name == "page_token");
            Assert.Contains(answer.Field, field => field.Name == "next_page_token");
        });

    /// <summary>The same question and answer as another method's, many of them each way on one call: AnswerQuestions and AnswerQuestion.</summary>
    private static bool IsStreamOfAnother(MethodDescriptorProto method) => method.ClientStreaming && method.ServerStreaming
        && Methods().Any(other => !other.ClientStreaming && $"{other.Name}s" == method.Name && other.InputType == method.InputType && other.OutputType == method.OutputType);

    private static DescriptorProto Message(string name) => Files.SelectMany(file => file.MessageType).Single(message => message.Name == name);

    private static IEnumerable<DescriptorProto> Messages() => Files.SelectMany(file => file.MessageType).SelectMany(WithNested).Where(message => !(message.Options?.MapEntry ?? false));

    private static IEnumerable<DescriptorProto> WithNested(DescriptorProto message) => message.NestedType.SelectMany(WithNested).Prepend(message);

    private static IEnumerable<EnumDescriptorProto> Enums() => Files.SelectMany(file => file.EnumType).Concat(Messages().SelectMany(message => message.EnumType));

    private static IEnumerable<MethodDescriptorProto> Methods() => Files.SelectMany(file => file.Service).SelectMany(service => service.Method);

    private static string SmallStart(string name)
    {
        var joined = string.Concat(name.Split('_').Select(word => char.ToUpperInvariant(word[0]) + word[1..]));
        return char.ToLowerInvariant(joined[0]) + joined[1..];
    }

    [GeneratedRegex("^[A-Z][A-Za-z0-9]*$")]
    private static partial Regex CapitalWords();
}
