using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>What can stand in for an ingredient.</summary>
internal static class ReplaceScreen
{
    // With more than so many, a table is read first and one answer in full.
    private const int InFull = 3;

    /// <summary>Shows the answers: as any solving verb where they are few, else ranked in a table and the best in full.</summary>
    /// <param name="screen">Where to.</param>
    /// <param name="response">The answers.</param>
    /// <param name="most">Most that stand in the table; the others are named in one line.</param>
    public static void Show(Screen screen, ReplaceIngredientResponse response, int most)
    {
        LinesRead.Show(screen, response.LinesRead);
        var answers = response.Answers.Take(most).ToList();
        if (answers.Count > 1 && answers.All(answer => answer.Replacement is not null))
        {
            Ranked(screen, answers, All(response));
        }

        if (answers.Count > 0 && answers.All(answer => answer.Replacement is not null && answer.Readings.Count == 0))
        {
            foreach (var answer in answers.Take(InFull))
            {
                Dose(screen, answer);
            }

            return;
        }

        AnswersScreen.Show(screen, [.. answers.Take(answers.Count > InFull ? 1 : InFull)], response.Conflict, response.Nearest);
    }

    private static List<string> All(ReplaceIngredientResponse response) =>
        [.. response.Answers.Select(answer => answer.Replacement).Concat(response.Further).Select(What)];

    private static void Ranked(Screen screen, List<Answer> answers, List<string> all)
    {
        screen.Heading(all.Count > answers.Count ? $"The best {answers.Count} of {all.Count} ways" : $"{answers.Count} ways, best first");
        if (screen.IsNarrow)
        {
            foreach (var answer in answers)
            {
                screen.Item($"{What(answer.Replacement)}: {Timing(answer)}, water {Signed(answer.Replacement.WaterMoreGrams)} g, sodium {Signed(answer.Replacement.SodiumMoreMg)} mg");
            }

            Others(screen, answers, all);
            return;
        }

        var table = new PlainTable().Words("comes in").Figures("water, g").Figures("sodium, mg").Marks("gas").Figures("oven within, min");
        foreach (var answer in answers)
        {
            var replaced = answer.Replacement;
            table.Row(
                What(answer.Replacement),
                Signed(replaced.WaterMoreGrams),
                Signed(replaced.SodiumMoreMg),
                Timing(answer),
                replaced.HasWorkingWindowMinutes ? Amount.Grams(Math.Round(replaced.WorkingWindowMinutes)) : "");
        }

        screen.Table(table);
        Others(screen, answers, all);
    }

    private static void Others(Screen screen, List<Answer> answers, List<string> all)
    {
        if (all.Count > answers.Count)
        {
            screen.Gap();
            screen.Sentence($"Would do too: {string.Join(", ", all.Skip(answers.Count))}. With --answers {all.Count} they stand in the table.");
        }
    }

    private static void Dose(Screen screen, Answer answer)
    {
        screen.Heading(What(answer.Replacement));
        ChangesTable.Show(screen, answer.Changes);
        screen.Gap();
        foreach (var note in answer.Notes)
        {
            screen.Sentence(note);
        }

        Cautions.Show(screen, answer.Cautions);
    }

    private static string What(LeaveningReplacement replacement) =>
        string.Join(" and ", replacement.Doses.Select(dose => $"{Amount.Grams(dose.Grams)} g of {dose.DisplayName}"));

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
