using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;
using Kind = SwapSolver.V1.AskedFor.Types.Kind;
using Verdict = SwapSolver.V1.AnswerQuestionResponse.Types.Verdict;

namespace SwapSolver.Service.Tests.Services;

[Collection(OpenKitchen.Name)]
public sealed class QuestionStreamTests(OpenKitchen kitchen)
{
    [Fact]
    public async Task A_stream_answers_in_the_order_of_the_questions_and_a_bad_row_ends_nothing()
    {
        using var call = kitchen.Service.Questions.AnswerQuestions();
        var questions = new[] { "no nuts", "can I freeze it?", "20 slices" };
        for (var row = 0; row < questions.Length; row++)
        {
            await call.RequestStream.WriteAsync(new AnswerQuestionRequest { Row = row + 1, Formula = Bakes.Hazelnut, Question = questions[row], Mark = $"mark {row + 1}" });
        }

        await call.RequestStream.WriteAsync(new AnswerQuestionRequest { Row = 4, Name = "formulas/never-written", Question = "no nuts" });
        await call.RequestStream.CompleteAsync();
        var answers = new List<AnswerQuestionResponse>();
        while (await call.ResponseStream.MoveNext(CancellationToken.None))
        {
            answers.Add(call.ResponseStream.Current);
        }

        Assert.Equal([1, 2, 3, 4], answers.Select(answer => answer.Row));
        Assert.Equal([Verdict.YesWithChanges, Verdict.NotUnderstood, Verdict.YesWithChanges, Verdict.Failed], answers.Select(answer => answer.Verdict));
        Assert.Equal("mark 1", answers[0].Mark);
        Assert.Contains("formulas/never-written", answers[3].Problem, StringComparison.Ordinal);
    }

    /// <summary>Answers that are ready together leave in one piece; the last of a piece does not wait for more questions.</summary>
    [Fact]
    public async Task Hundreds_of_rows_each_have_the_answer_that_they_have_alone_and_none_waits_for_another_question()
    {
        const int Rows = 200;
        AnswerQuestionRequest Row(int row) => new()
        {
            Row = row + 1,
            Formula = Bakes.Hazelnut,
            Fields = new AskedFor { Kind = Kind.Check, From = "butter", To = "coconut-oil", FromGrams = 5 + (row * 0.05) },
        };
        using var call = kitchen.Service.Questions.AnswerQuestions();
        for (var row = 0; row < Rows; row++)
        {
            await call.RequestStream.WriteAsync(Row(row));
        }

        var answers = new List<AnswerQuestionResponse>();
        using var patience = new CancellationTokenSource(TimeSpan.FromMinutes(1));
        while (answers.Count < Rows && await call.ResponseStream.MoveNext(patience.Token))
        {
            answers.Add(call.ResponseStream.Current);
        }

        await call.RequestStream.CompleteAsync();
        Assert.False(await call.ResponseStream.MoveNext(patience.Token));
        Assert.Equal(Enumerable.Range(1, Rows), answers.Select(answer => answer.Row));
        Assert.All(answers, answer => Assert.Equal(Verdict.Yes, answer.Verdict));
        foreach (var row in new[] { 0, 15, 16, Rows - 1 })
        {
            Assert.Equal(await kitchen.Service.Questions.AnswerQuestionAsync(Row(row)), answers[row]);
        }
    }
}
