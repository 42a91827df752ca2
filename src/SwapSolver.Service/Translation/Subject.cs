using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Lines;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Stored;

namespace SwapSolver.Service.Translation;

/// <summary>Finds the formula that a question is about: a stored one by its name, or one that is given inline.</summary>
internal sealed class Subject(Pantry pantry, IngredientLines texts, StoredFormulas stored)
{
    /// <summary>The formula; where problems were added it is not to be used.</summary>
    /// <param name="name">Name of a stored formula; empty where the formula is inline.</param>
    /// <param name="inline">The formula given inline; null where it is stored.</param>
    /// <param name="problems">What is wrong with it.</param>
    /// <param name="path">Field of the formula given inline.</param>
    /// <exception cref="Grpc.Core.RpcException">NOT_FOUND for a name that is not known.</exception>
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

        var found = stored.Find(name) ?? throw ProblemList.NotFound(name, NearestNames.To(name, stored.Names));
        return new FormulaReader(pantry, texts, problems).Read(found, path);
    }
}
