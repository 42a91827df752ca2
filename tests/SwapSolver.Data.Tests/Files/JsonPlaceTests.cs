using System.Text;
using SwapSolver.Data.Files;

namespace SwapSolver.Data.Tests.Files;

public sealed class JsonPlaceTests
{
    [Theory]
    [InlineData("a comma for a decimal point", "{\n  \"low\": 3,52\n}", 2)]
    [InlineData("a comma too many", "{\n  \"low\": 3,\n}", 3)]
    [InlineData("a word without quotes", "{\n  \"role\": flour\n}", 2)]
    [InlineData("a quote that is not closed", "{\n  \"role\": \"flour\n}", 2)]
    [InlineData("an end that is missing", "{\n  \"role\": \"flour\"\n", 3)]
    [InlineData("a remark", "{\n  // from memory\n  \"low\": 3\n}", 2)]
    [InlineData("no text at all", "", 1)]
    [InlineData("a second text after the end", "{}\n{}", 2)]
    [InlineData("a word after the end", "{}\nend", 2)]
    public void What_is_not_json_is_shown_in_its_line(string what, string text, int line)
    {
        var fault = Fault(text);

        Assert.True(line == fault.Line, $"{what}: line {fault.Line}");
        Assert.Equal("jar.json", fault.File);
        Assert.Contains("JSON", fault.Message, StringComparison.Ordinal);
        Assert.InRange(fault.Column, 1, text.Split('\n')[line - 1].Length + 1);
    }

    [Fact]
    public void A_comma_that_is_missing_is_missed_between_the_two_lines()
    {
        // The eye looks at the end of the one line or the start of the next.
        var fault = Fault("{\n  \"low\": 3\n  \"high\": 4\n}");

        Assert.InRange(fault.Line, 2, 3);
    }

    [Fact]
    public void A_letter_with_an_accent_is_one_column_wide()
    {
        var text = "{\n  \"name\": \"crème brûlée\", \"grams\": \"ten\"\n}";
        var fault = Assert.Throws<DataFaultException>(() => Read(text).Get("grams").Number);

        fault.AssertPointsAt("jar.json", text, "^\"ten\"", "a number");
    }

    [Fact]
    public void A_line_that_ends_as_windows_ends_it_is_shown_without_its_end()
    {
        var fault = Assert.Throws<DataFaultException>(() => Read("{\r\n  \"grams\": \"ten\"\r\n}").Get("grams").Number);

        Assert.Equal((2, 12), (fault.Line, fault.Column));
        Assert.DoesNotContain("\"ten\"\r\r", fault.Message, StringComparison.Ordinal);
        Assert.Contains($"  \"grams\": \"ten\"{Environment.NewLine}", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_saved_in_another_encoding_is_shown_as_a_fault_and_not_as_a_crash()
    {
        // "crème" in Latin-1: the byte E8 is no UTF-8.
        var bytes = Encoding.Latin1.GetBytes("{\n  \"name\": \"crème\"\n}");
        var fault = Assert.Throws<DataFaultException>(() => JsonPlace.Read(new SourceText("jar.json", bytes)).Get("name").Text);

        Assert.Equal(2, fault.Line);
    }

    [Fact]
    public void Half_a_letter_is_shown_as_a_fault_and_not_as_a_crash()
    {
        // A lone surrogate is no letter, though JSON lets it be written.
        var fault = Assert.Throws<DataFaultException>(() => Read("{\n  \"name\": \"\\ud83c\"\n}").Get("name").Text);

        Assert.Equal(2, fault.Line);
    }

    [Fact]
    public void Values_are_read_as_they_are_written()
    {
        var root = Read("{ \"text\": \"rye\", \"number\": 2.5e1, \"flag\": false, \"list\": [1, 2], \"none\": null }");

        Assert.Equal("rye", root.Get("text").Text);
        Assert.Equal(25, root.Get("number").Number);
        Assert.False(root.Get("flag").Flag);
        Assert.Equal([1, 2], root.Get("list").Items.Select(item => item.Number));
        Assert.Null(root.Find("none"));
        Assert.Null(root.Find("absent"));
    }

    [Fact]
    public void A_value_of_the_wrong_kind_is_refused()
    {
        var root = Read("{ \"text\": \"rye\", \"list\": [1] }");

        Assert.Throws<DataFaultException>(() => root.Get("text").Items);
        Assert.Throws<DataFaultException>(() => root.Get("text").Properties);
        Assert.Throws<DataFaultException>(() => root.Get("list").Properties);
        Assert.Throws<DataFaultException>(() => root.Get("list").Text);
        Assert.Throws<DataFaultException>(() => root.Get("text").Flag);
    }

    private static DataFaultException Fault(string text) => Assert.Throws<DataFaultException>(() => Read(text));

    private static JsonPlace Read(string text) => JsonPlace.Read(new SourceText("jar.json", Encoding.UTF8.GetBytes(text)));
}
