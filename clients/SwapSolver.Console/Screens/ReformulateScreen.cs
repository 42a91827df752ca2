using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>The formula with its readings moved.</summary>
internal static class ReformulateScreen
{
    /// <summary>Shows the readings that were to move, before and after, then the answers.</summary>
    public static void Show(Screen screen, ReformulateFormulaResponse response)
    {
        LinesRead.Show(screen, response.LinesRead);
        var after = response.Answers.Count > 0 ? response.Answers[0] : response.Nearest;
        if (response.Before.Count > 0)
        {
            screen.Part("What was to move");
            var table = new PlainTable().Words("reading").Figures("before").Figures("wanted").Figures("after").Marks("");
            foreach (var before in response.Before)
            {
                var now = after?.Readings.FirstOrDefault(reading => reading.Balance == before.Balance);
                var text = new ReadingText(before);
                table.Row(
                    ReadingTitle.WithUnit(before),
                    text.Value,
                    text.Band,
                    now is null ? "" : new ReadingText(now).Value,
                    now is null ? "" : new ReadingText(now).Standing);
            }

            screen.Table(table);
        }

        AnswersScreen.Show(screen, response.Answers, response.Conflict, response.Nearest);
    }
}
