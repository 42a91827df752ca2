using System.Globalization;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Lines;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Stored;

namespace SwapSolver.Service.Translation;

/// <summary>Finds the formula that a question is about: a stored one by its name, or one that is given inline.</summary>
internal sealed class Subject(Pantry pantry, IngredientLines texts, FormulaLibrary library)
{
    private readonly List<string> stored = [];

    /// <summary>The stored states that this call read, in their order: the answer of a question hangs on them too.</summary>
    public string States => string.Join(' ', stored);

    /// <summary>The formula; where problems were added it is not to be used.</summary>
    /// <param name="name">Name of a stored formula or revision; empty where the formula is inline.</param>
    /// <param name="inline">The formula given inline; null where it is stored.</param>
    /// <param name="problems">What is wrong with it.</param>
    /// <param name="path">Field of the formula given inline.</param>
    /// <exception cref="Grpc.Core.RpcException">NOT_FOUND for a name that is not known, or of a formula that is put away.</exception>
    public ReadFormula? Read(string name, V1.Formula? inline, ProblemList problems, string path = "formula")
    {
        if (inline is not null)
        {
            return new FormulaReader(pantry, texts, problems).Read(inline, path);
        }

        if (string.IsNullOrEmpty(name))
        {
            problems.Add(path, string.Empty, "the formula is missing", "give a 'formula', or the 'name' of a stored one");
            return null;
        }

        var found = library.Find(name);
        if (found.Head is { Deleted: not null })
        {
            throw FormulaRefusal.PutAway(name);
        }

        Remember(found.Revision is { } revision ? string.Create(CultureInfo.InvariantCulture, $"{revision.Formula}/{revision.Number}@{revision.Created}") : name);
        return new FormulaReader(pantry, texts, problems).Read(found.Formula, path);
    }

    /// <summary>Notes a stored state that the answer hangs on.</summary>
    public void Remember(string state) => stored.Add(state);
}
