using System.Globalization;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Lines;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Stored;

namespace SwapSolver.Service.Translation;

/// <summary>Finds the formula that a call is about: a stored one by its name, or one that is given inline.</summary>
internal sealed class Subject(Pantry pantry, IngredientLines texts, FormulaLibrary library)
{
    private readonly List<string> stored = [];

    /// <summary>The stored states, beside that of its own formula, that this call read, in their order: its answer hangs on them too.</summary>
    public string States => string.Join(' ', stored);

    /// <summary>The formula that the question is about, as its caller wrote it; null where none was read for a question.</summary>
    public ReadFormula? AsGiven { get; private set; }

    /// <summary>The same in the order of ids.</summary>
    public ReadFormula? InOrderOfIds { get; private set; }

    /// <summary>The formula of a question, its lines in the order of ids: the answer gets its caller's order back from the
    /// cache of answers. Where problems were added it is not to be used.</summary>
    /// <param name="name">Name of a stored formula or revision; empty where the formula is inline.</param>
    /// <param name="inline">The formula given inline; null where it is stored.</param>
    /// <param name="problems">What is wrong with it.</param>
    /// <exception cref="Grpc.Core.RpcException">NOT_FOUND for a name that is not known, or of a formula that is put away.</exception>
    public ReadFormula? Read(string name, V1.Formula? inline, ProblemList problems)
    {
        (AsGiven, _) = Find(name, inline, problems, "formula");
        InOrderOfIds = AsGiven?.InOrderOfIds();
        return InOrderOfIds;
    }

    /// <summary>A formula with its lines as they were written.</summary>
    /// <param name="name">Name of a stored formula or revision; empty where the formula is inline.</param>
    /// <param name="inline">The formula given inline; null where it is stored.</param>
    /// <param name="problems">What is wrong with it.</param>
    /// <param name="path">Field of the formula given inline.</param>
    /// <exception cref="Grpc.Core.RpcException">NOT_FOUND for a name that is not known, or of a formula that is put away.</exception>
    public ReadFormula? ReadAsGiven(string name, V1.Formula? inline, ProblemList problems, string path = "formula")
    {
        var (read, state) = Find(name, inline, problems, path);
        Remember(state);
        return read;
    }

    /// <summary>Notes a stored state that the answer hangs on, where there is one.</summary>
    public void Remember(string? state)
    {
        if (state is not null)
        {
            stored.Add(state);
        }
    }

    private (ReadFormula? Read, string? State) Find(string name, V1.Formula? inline, ProblemList problems, string path)
    {
        if (inline is not null)
        {
            return (new FormulaReader(pantry, texts, problems).Read(inline, path), null);
        }

        if (string.IsNullOrEmpty(name))
        {
            problems.Add(path, string.Empty, "the formula is missing", "give a 'formula', or the 'name' of a stored one");
            return (null, null);
        }

        var found = library.Find(name);
        if (found.Head is { Deleted: not null })
        {
            throw FormulaRefusal.PutAway(name);
        }

        var state = found.Revision is { } revision ? string.Create(CultureInfo.InvariantCulture, $"{revision.Formula}/{revision.Number}@{revision.Created}") : name;
        return (new FormulaReader(pantry, texts, problems).Read(found.Formula, path), state);
    }
}
