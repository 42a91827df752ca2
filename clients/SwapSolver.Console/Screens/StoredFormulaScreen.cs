using System.Globalization;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>One stored formula.</summary>
internal static class StoredFormulaScreen
{
    /// <summary>Shows where it stands and its lines as they were written.</summary>
    public static void Show(Screen screen, Formula formula)
    {
        screen.Heading(formula.DisplayName);
        screen.Sentence(Standing(formula));
        if (formula.Description.Length > 0)
        {
            screen.Sentence(formula.Description);
        }

        screen.Part("Lines");
        foreach (var line in formula.Lines)
        {
            screen.Item(Words(line));
        }

        if (formula.HasSlices)
        {
            screen.Gap();
            screen.Sentence($"{formula.Slices} slices or pieces. How it balances: swapsolver balance {formula.Name}");
        }
    }

    private static string Standing(Formula formula) => formula switch
    {
        { HasRevision: false } => $"{formula.Name}, shipped with the program.",
        { DeleteTime: not null } => $"{formula.Name}, revision {formula.Revision}; put away {MomentText.Of(formula.DeleteTime)}; etag {formula.Etag}.",
        { HasPublishedRevision: true } => $"{formula.Name}, revision {formula.Revision}; revision {formula.PublishedRevision} is published; etag {formula.Etag}.",
        _ => $"{formula.Name}, revision {formula.Revision} of {MomentText.Of(formula.UpdateTime)}; etag {formula.Etag}.",
    };

    private static string Words(Line line)
    {
        var what = line.HasText ? line.Text : IngredientName.Id(line.Ingredient);
        var amount = line switch
        {
            { HasGrams: true } => $"{Number(line.Grams)} g",
            { HasAmount: true } => $"{Number(line.Amount)} {line.Unit}",
            { HasCount: true } => Number(line.Count),
            _ => string.Empty,
        };
        return string.Join(' ', new[] { amount, what, line.HasCount && line.HasSize ? $"({Amount.Count(line)})" : string.Empty }.Where(part => part.Length > 0));
    }

    private static string Number(double figure) => figure.ToString("0.####", CultureInfo.InvariantCulture);
}
