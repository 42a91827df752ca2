using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>What a solving verb brings back: the answers, or why there is none.</summary>
internal static class AnswersScreen
{
    /// <summary>Shows the answers, best first; without any, the wishes that fight and the nearest formula.</summary>
    public static void Show(Screen screen, IReadOnlyList<Answer> answers, IReadOnlyCollection<Conflict> conflict, Answer? nearest)
    {
        if (ModelText.Show(screen, answers))
        {
            return;
        }

        if (answers.Count > 0)
        {
            ShowRanked(screen, answers);
            return;
        }

        screen.Heading("No formula meets all of these wishes.");
        ConflictLines.Show(screen, conflict);
        if (nearest is not null)
        {
            AnswerScreen.Show(screen, nearest, "Nearest, but it does not meet them", nearest.Cautions);
        }
    }

    private static void ShowRanked(Screen screen, IReadOnlyList<Answer> answers)
    {
        var shared = answers.Skip(1).Aggregate<Answer, IEnumerable<string>>(
            answers[0].Cautions, (left, answer) => left.Intersect(answer.Cautions)).ToList();
        for (var place = 0; place < answers.Count; place++)
        {
            var name = answers[place].Formula.DisplayName;
            var heading = answers.Count == 1 ? "Answer" : $"Answer {place + 1} of {answers.Count}";
            AnswerScreen.Show(
                screen,
                answers[place],
                name.Length > 0 ? $"{heading}: {name}" : heading,
                [.. answers[place].Cautions.Except(shared)]);
        }

        if (answers.Count > 1)
        {
            screen.Heading("Whichever you bake");
        }

        Cautions.Show(screen, shared);
    }
}
