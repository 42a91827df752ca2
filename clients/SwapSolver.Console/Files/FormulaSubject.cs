using SwapSolver.V1;

namespace SwapSolver.Console.Files;

/// <summary>The formula a question is about: the name of a stored one, or the formula itself.</summary>
internal sealed class FormulaSubject
{
    private const string Collection = "formulas/";

    private static readonly MessageReader<Formula> Reader = new(FileKind.Formula);

    private readonly string? name;
    private readonly Formula? formula;

    private FormulaSubject(string? name, Formula? formula)
    {
        this.name = name;
        this.formula = formula;
    }

    /// <summary>Finds the formula that a caller names: a stored name, a file, or - for standard input.</summary>
    public static async Task<Checked<FormulaSubject>> ReadAsync(string text, CancellationToken cancel)
    {
        if (IsStoredName(text))
        {
            return new FormulaSubject(text, null);
        }

        var bytes = await FileSource.ReadAsync(text, FileKind.Formula, cancel);
        var formula = bytes.IsGood ? Reader.Read(bytes.Value) : Checked<Formula>.Bad(bytes.Problems);
        if (formula.IsGood)
        {
            return new FormulaSubject(null, formula.Value);
        }

        return Checked<FormulaSubject>.Bad([.. formula.Problems.Select(problem => $"{FileSource.PlaceOf(text)}: {problem}")]);
    }

    /// <summary>The formula; null where only its name was given.</summary>
    public Formula? Formula => formula;

    /// <summary>The same formula, its cups and spoons meant in this system whatever the file says.</summary>
    public Checked<FormulaSubject> In(Line.Types.System system) => formula is null
        ? Checked<FormulaSubject>.Bad($"--system has no use beside the stored formula {name}: that one says itself whose cups it means. Leave it away, or give a formula file.")
        : new FormulaSubject(null, new Formula(formula) { System = system });

    /// <summary>Puts the formula, or else its name, into a request.</summary>
    public void PutInto(Action<Formula> setFormula, Action<string> setName)
    {
        if (formula is not null)
        {
            setFormula(formula);
        }
        else if (name is not null)
        {
            setName(name);
        }
    }

    // A dot makes it a file: formulas/loaf.json lies in a folder that happens to be called formulas.
    private static bool IsStoredName(string text) =>
        text.StartsWith(Collection, StringComparison.Ordinal) && text.Length > Collection.Length && !text.Contains('.');
}
