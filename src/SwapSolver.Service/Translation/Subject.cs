using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Lines;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Stored;

namespace SwapSolver.Service.Translation;

/// <summary>Finds the formula that a call is about: a stored one by its name, or one that is given inline.</summary>
internal sealed class Subject(Pantry pantry, IngredientLines texts, StoredFormulas stored)
{
    /// <summary>The formula that the question is about, as its caller wrote it; null where none was read for a question.</summary>
    public ReadFormula? AsGiven { get; private set; }

    /// <summary>The same in the order of ids.</summary>
    public ReadFormula? InOrderOfIds { get; private set; }

    /// <summary>The formula of a question, its lines in the order of ids: the answer gets its caller's order back from the
    /// cache of answers. Where problems were added it is not to be used.</summary>
    /// <param name="name">Name of a stored formula; empty where the formula is inline.</param>
    /// <param name="inline">The formula given inline; null where it is stored.</param>
    /// <param name="problems">What is wrong with it.</param>
    /// <exception cref="Grpc.Core.RpcException">NOT_FOUND for a name that is not known.</exception>
    public ReadFormula? Read(string name, V1.Formula? inline, ProblemList problems)
    {
        AsGiven = ReadAsGiven(name, inline, problems);
        InOrderOfIds = AsGiven?.InOrderOfIds();
        return InOrderOfIds;
    }

    /// <summary>The same, its lines as they were written.</summary>
    /// <param name="name">Name of a stored formula; empty where the formula is inline.</param>
    /// <param name="inline">The formula given inline; null where it is stored.</param>
    /// <param name="problems">What is wrong with it.</param>
    /// <param name="path">Field of the formula given inline.</param>
    /// <exception cref="Grpc.Core.RpcException">NOT_FOUND for a name that is not known.</exception>
    public ReadFormula? ReadAsGiven(string name, V1.Formula? inline, ProblemList problems, string path = "formula")
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

        var found = stored.Find(name) ?? throw ProblemList.NotFound(name, NearestNames.To(name, stored.Names));
        return new FormulaReader(pantry, texts, problems).Read(found, path);
    }
}
