using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>What can stand in for an ingredient.</summary>
internal static class ReplaceScreen
{
    // With more than so many, a table is read first and one answer in full.
    private const int InFull = 3;

    /// <summary>Shows the answers: as any solving verb where they are few, else ranked in a table and the best in full.</summary>
    public static void Show(Screen screen, ReplaceIngredientResponse response)
    {
        LinesRead.Show(screen, response.LinesRead);
        if (response.Answers.Count > 1 && response.Answers.All(answer => answer.Replacement is not null))
        {
            Ranked(screen, response.Answers);
        }

        var isDose = response.Answers.Count > 0 && response.Answers.All(answer => answer.Replacement is not null && answer.Readings.Count == 0);
        if (isDose)
        {
            foreach (var answer in response.Answers.Take(InFull))
            {
                Dose(screen, answer);
            }

            return;
        }

        AnswersScreen.Show(screen, [.. response.Answers.Take(response.Answers.Count > InFull ? 1 : InFull)], response.Conflict, response.Nearest);
    }

    private static void Ranked(Screen screen, Google.Protobuf.Collections.RepeatedField<Answer> answers)
    {
        screen.Heading($"{answers.Count} ways, best first");
        if (screen.IsNarrow)
        {
            foreach (var answer in answers)
            {
                screen.Item($"{What(answer)}: {Timing(answer)}, water {Signed(answer.Replacement.WaterMoreGrams)} g, sodium {Signed(answer.Replacement.SodiumMoreMg)} mg");
            }

            return;
        }

        var table = new PlainTable().Words("comes in").Figures("water, g").Figures("sodium, mg").Marks("gas").Figures("oven within, min");
        foreach (var answer in answers)
        {
            var replaced = answer.Replacement;
            table.Row(
                What(answer),
                Signed(replaced.WaterMoreGrams),
                Signed(replaced.SodiumMoreMg),
                Timing(answer),
                replaced.HasWorkingWindowMinutes ? Amount.Grams(Math.Round(replaced.WorkingWindowMinutes)) : "");
        }

        screen.Table(table);
    }

    private static void Dose(Screen screen, Answer answer)
    {
        screen.Heading(What(answer));
        ChangesTable.Show(screen, answer.Changes);
        screen.Gap();
        foreach (var note in answer.Notes)
        {
            screen.Sentence(note);
        }

        Cautions.Show(screen, answer.Cautions);
    }

    private static string What(Answer answer) => string.Join(" and ", answer.Replacement.Doses.Select(dose =>
        $"{Amount.Grams(dose.Grams)} g of {Name(answer, dose.Ingredient)}"));

    private static string Name(Answer answer, string ingredient) =>
        answer.Changes.FirstOrDefault(change => change.Ingredient == ingredient) is { DisplayName.Length: > 0 } change
            ? change.DisplayName
            : IngredientName.Of(ingredient);

    private static string Timing(Answer answer) => answer.Replacement.Timing switch
    {
        LeaveningReplacement.Types.Timing.Faster => "faster",
        LeaveningReplacement.Types.Timing.Slower => "slower",
        LeaveningReplacement.Types.Timing.OvenOnly => "oven only",
        _ => "as fast",
    };

    private static string Signed(double amount)
    {
        var written = Amount.Grams(Math.Abs(Math.Round(amount)));
        return written == "0" ? "0" : (amount < 0 ? "-" : "+") + written;
    }
}
