using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Lines;
using SwapSolver.Records.Formulas;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Translation;

namespace SwapSolver.Service.Stored;

/// <summary>Reads a formula that is to be saved, and names everything that is wrong with it.</summary>
internal sealed class DraftReader(Pantry pantry, IngredientLines texts, ProblemList problems)
{
    private const int MostNameLetters = 200;

    private const int MostNoteLetters = 2000;

    private const int MostGoals = 10;

    private const int MostGoalLetters = 100;

    /// <summary>The formula as it is to be saved; where problems were added it is not to be used.</summary>
    public FormulaDraft Read(V1.Formula? formula, string note, IReadOnlyCollection<string> goals)
    {
        if (formula is null)
        {
            problems.Add("formula", string.Empty, "the formula is missing", "give a 'formula' with its lines");
            return new FormulaDraft(string.Empty, string.Empty, note, "[]");
        }

        new FormulaReader(pantry, texts, problems).Read(formula, "formula");
        if (string.IsNullOrWhiteSpace(formula.DisplayName) || formula.DisplayName.Length > MostNameLetters)
        {
            problems.Add("formula.displayName", formula.DisplayName, "is no name to find it by", $"give 1 to {MostNameLetters} letters, as Hazelnut tin loaf");
        }

        RequireText("formula.displayName", formula.DisplayName, MostNameLetters);
        RequireText("formula.description", formula.Description, MostNoteLetters);
        RequireText("note", note, MostNoteLetters);
        if (goals.Count > MostGoals || goals.Any(goal => goal.Length is 0 or > MostGoalLetters))
        {
            problems.Add("goals", goals.Count, "goals cannot be followed", $"give at most {MostGoals}, each of 1 to {MostGoalLetters} letters, as softer");
        }

        return new FormulaDraft(FormulaDocument.Write(formula), formula.DisplayName.Trim(), note, Goals.Write(goals));
    }

    /// <summary>The id that a new formula gets.</summary>
    public string NewId(string id, string displayName)
    {
        var wanted = id.Length > 0 ? ResourceName.FormulaId(id) : ResourceName.IdOf(displayName);
        if (!ResourceName.IsId(wanted) && (id.Length > 0 || problems.Count == 0))
        {
            problems.Add("formulaId", id, "is no id", $"give small letters, digits and hyphens, at most {ResourceName.MostLetters}, as hazelnut-tin-loaf");
        }

        return wanted;
    }

    /// <summary>Words that are kept hold no letter that a database cannot keep.</summary>
    private void RequireText(string path, string text, int most)
    {
        if (text.Contains('\0', StringComparison.Ordinal))
        {
            problems.Add(path, string.Empty, "holds a NUL, which is no letter", "leave it away");
        }
        else if (text.Length > most)
        {
            problems.Add(path, text, "is too long", $"give at most {most} letters");
        }
    }
}
