using SwapSolver.Console.Working;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>Jobs, and how far they are.</summary>
internal static class JobScreen
{
    /// <summary>Shows one.</summary>
    public static void Show(Screen screen, Job job)
    {
        screen.Sentence($"Job {JobName.Id(job.Name)}{(job.DisplayName.Length > 0 ? $" ({job.DisplayName})" : string.Empty)}: {Word(job)}, {JobWatch.Words(job)}.");
        screen.Sentence($"Begun {MomentText.Of(job.CreateTime)}{(job.EndTime is null ? string.Empty : $", ended {MomentText.Of(job.EndTime)}")}.");
        screen.Sentence($"{string.Join(" and ", job.Catalogue.Parts).ToLowerInvariant()} of {(job.Catalogue.Formulas.Count == 0 ? "every formula" : string.Join(", ", job.Catalogue.Formulas.Select(Arguments.FormulaName.Id)))}{Wishes(job.Catalogue)}.");
    }

    /// <summary>Shows all.</summary>
    public static void ShowAll(Screen screen, ListJobsResponse response)
    {
        if (response.Jobs.Count == 0)
        {
            screen.Sentence("No job was begun. One is with: swapsolver job start");
            return;
        }

        if (screen.IsNarrow)
        {
            foreach (var job in response.Jobs)
            {
                screen.Item($"{JobName.Id(job.Name)}: {Word(job)}, {JobWatch.Words(job)}");
            }

            return;
        }

        var table = new PlainTable().Marks("id").Words("name").Words("standing").Words("items").Marks("begun");
        foreach (var job in response.Jobs)
        {
            table.Row(JobName.Id(job.Name), job.DisplayName, Word(job), JobWatch.Words(job), MomentText.Of(job.CreateTime));
        }

        screen.Table(table);
    }

    private static string Wishes(Catalogue catalogue)
    {
        var wishes = catalogue.Diets.Select(Word).Concat(catalogue.Without.Select(word => $"without {word}")).ToList();
        return catalogue.Parts.Contains(Catalogue.Types.Part.Variants) && wishes.Count > 0 ? $": {string.Join(", ", wishes)}" : string.Empty;
    }

    private static string Word(VaryFormulaRequest.Types.Diet diet) =>
        VaryFormulaRequest.Descriptor.EnumTypes[0].FindValueByNumber((int)diet)?.Name.Replace('_', '-').ToLowerInvariant() ?? string.Empty;

    private static string Word(Job job) => job.State.ToString().ToLowerInvariant();
}
