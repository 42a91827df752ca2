using SwapSolver.Console.Arguments;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>The stored formulas, a line each.</summary>
internal static class FormulaListScreen
{
    /// <summary>Shows the list and how long it is.</summary>
    public static void Show(Screen screen, ListFormulasResponse response)
    {
        if (response.Formulas.Count == 0)
        {
            screen.Sentence("No stored formula is like that.");
            return;
        }

        if (screen.IsNarrow)
        {
            foreach (var formula in response.Formulas)
            {
                screen.Item($"{FormulaName.Id(formula.Name)}: {formula.DisplayName}; {Standing(formula)}");
            }
        }
        else
        {
            var table = new PlainTable().Words("id").Words("name").Words("standing").Marks("changed");
            foreach (var formula in response.Formulas)
            {
                table.Row(FormulaName.Id(formula.Name), formula.DisplayName, Standing(formula), MomentText.Of(formula.UpdateTime));
            }

            screen.Table(table);
        }

        screen.Gap();
        screen.Sentence($"{response.Formulas.Count} {(response.Formulas.Count == 1 ? "formula" : "formulas")}. More of one: swapsolver formula show ID");
    }

    private static string Standing(Formula formula) => formula switch
    {
        { HasRevision: false } => "shipped",
        { DeleteTime: not null } => $"revision {formula.Revision}, put away",
        { HasPublishedRevision: true } => $"revision {formula.Revision}, published in {formula.PublishedRevision}",
        _ => $"revision {formula.Revision}",
    };
}
