using SwapSolver.Console.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Console.Tests.Verbs;

public sealed class AnswerTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("swapsolver-tests-");

    [Fact]
    public async Task Answers_go_on_where_a_stopped_run_ended_without_loss_or_repetition()
    {
        var questions = Write("questions.csv", "formula,question\nformulas/hazelnut-tin-loaf,no sesame please\nformulas/hazelnut-tin-loaf,can I freeze it?\nformulas/hazelnut-tin-loaf,no peanuts\n");
        var answers = Path.Combine(folder.FullName, "answers.jsonl");
        (await BuiltConsole.Run("answer", questions, "--out", answers)).Ends(1);
        var whole = await File.ReadAllLinesAsync(answers);
        Assert.Equal(3, whole.Length);
        // As a process leaves it that was killed while it wrote the second answer.
        await File.WriteAllTextAsync(answers, whole[0] + "\n" + whole[1][..20]);
        (await BuiltConsole.Run("answer", questions, "--out", answers)).Ends(1);
        Assert.Equal(whole, await File.ReadAllLinesAsync(answers));
    }

    [Fact]
    public async Task Answers_to_other_questions_are_noticed_and_left_alone()
    {
        var answers = Path.Combine(folder.FullName, "answers.jsonl");
        (await BuiltConsole.Run("answer", Write("one.csv", "formula,question\nformulas/hazelnut-tin-loaf,no sesame please\n"), "--out", answers)).Ends(0);
        var before = await File.ReadAllTextAsync(answers);
        (await BuiltConsole.Run("answer", Write("two.csv", "formula,question\nformulas/hazelnut-tin-loaf,no lupin please\n"), "--out", answers)).Refuses("row 1", "--out");
        Assert.Equal(before, await File.ReadAllTextAsync(answers));
    }

    [Fact]
    public async Task A_table_without_its_columns_is_refused()
    {
        (await BuiltConsole.Run("answer", Write("bad.csv", "recipe,question\nx,y\n"))).Refuses("recipe", "formula");
        (await BuiltConsole.Run("answer", Path.Combine(folder.FullName, "none.csv"))).Refuses("none.csv", "columns");
    }

    [Fact]
    public async Task A_part_of_a_line_is_asked_in_a_column_as_in_words()
    {
        var answers = Path.Combine(folder.FullName, "parts.jsonl");
        var asked = Write("parts.csv", "formula,question,from,from_grams,to\nformulas/hazelnut-tin-loaf,almond flour for half of the hazelnut flour?,,,\nformulas/hazelnut-tin-loaf,,hazelnut-flour,90,almond-flour-blanched\n");
        (await BuiltConsole.Run("answer", asked, "--out", answers)).Ends(0);
        var rows = (await File.ReadAllLinesAsync(answers)).Select(AnswerQuestionResponse.Parser.ParseJson).ToList();
        Assert.Equal(90, rows[0].UnderstoodAs.FromGrams);
        Assert.Equal(rows[0].Formula, rows[1].Formula);
    }

    [Fact]
    public async Task Two_swaps_and_two_things_that_come_in_are_asked_in_columns_as_in_words()
    {
        var answers = Path.Combine(folder.FullName, "beside.jsonl");
        var asked = Write(
            "beside.csv",
            """
            formula,question,from,to,also_to,also_swaps
            formulas/vanilla-muffins,Could I use ghee for the butter and xylitol for the erythritol?,,,,
            formulas/vanilla-muffins,,butter,ghee,,erythritol=xylitol
            formulas/vanilla-muffins,Can I use baking soda and cream of tartar instead of baking powder?,,,,
            formulas/vanilla-muffins,,baking-powder-phosphate,baking-soda,cream-of-tartar,
            formulas/vanilla-muffins,,butter,ghee,,erythritol=xylitol:80
            """);
        (await BuiltConsole.Run("answer", asked, "--out", answers)).Ends(1);
        var rows = (await File.ReadAllLinesAsync(answers)).Select(AnswerQuestionResponse.Parser.ParseJson).ToList();
        Assert.Equal("xylitol", Assert.Single(rows[0].UnderstoodAs.AlsoSwaps).To);
        Assert.Equal(rows[0].UnderstoodAs.AlsoSwaps, rows[1].UnderstoodAs.AlsoSwaps);
        Assert.Equal(rows[0].Formula, rows[1].Formula);
        Assert.NotEmpty(rows[2].UnderstoodAs.AlsoTo);
        Assert.Equal(rows[2].Formula, rows[3].Formula);
        Assert.Contains("also_swaps", rows[4].Problem, StringComparison.Ordinal);
    }

    public void Dispose() => folder.Delete(recursive: true);

    private string Write(string name, string text)
    {
        var path = Path.Combine(folder.FullName, name);
        File.WriteAllText(path, text);
        return path;
    }
}
