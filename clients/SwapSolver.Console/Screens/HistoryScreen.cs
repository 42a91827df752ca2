using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>The revisions of a formula.</summary>
internal static class HistoryScreen
{
    /// <summary>Shows them newest first, each with the words and goals to it.</summary>
    public static void Show(Screen screen, ListRevisionsResponse response)
    {
        if (response.Revisions.Count == 0)
        {
            screen.Sentence("This formula is shipped with the program; it has no revisions. Copy it to change it.");
            return;
        }

        foreach (var revision in response.Revisions)
        {
            var number = revision.Name[(revision.Name.LastIndexOf('/') + 1)..];
            var note = revision.Note.Length > 0 ? $": {revision.Note}" : string.Empty;
            var goals = revision.Goals.Count > 0 ? $" (goals: {string.Join(", ", revision.Goals)})" : string.Empty;
            screen.Item($"{number}  {MomentText.Of(revision.CreateTime)}  {revision.Formula.DisplayName}{note}{goals}");
        }
    }
}
