using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Service.Faults;
using SwapSolver.Solving.Wishes;
using Domain = SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Service.Translation;

/// <summary>Refuses to solve with an ingredient of which a fact is not known that the rules read.</summary>
internal static class KnownFacts
{
    /// <summary>Names every line of the formula that cannot be solved with.</summary>
    public static void Require(BalanceList balances, Domain.Formula? formula, ProblemList problems)
    {
        foreach (var ingredient in formula?.Lines.Select(line => line.Ingredient).Distinct() ?? [])
        {
            Require(balances, ingredient, "formula.lines", problems);
        }
    }

    /// <summary>Names every line without a fact that a reading is made of, and says where the formula has no such reading.</summary>
    /// <param name="balance">The rule that is asked for.</param>
    /// <param name="formula">The formula; null where it could not be read.</param>
    /// <param name="path">The field that asks.</param>
    /// <param name="problems">Where to add them.</param>
    public static void RequireReading(Balance balance, Domain.Formula? formula, string path, ProblemList problems)
    {
        if (formula is null)
        {
            return;
        }

        var lacking = formula.Lines.Select(line => line.Ingredient).Distinct().Where(ingredient => !balance.CanRead(ingredient)).ToList();
        if (lacking.Count > 0)
        {
            Lacking(balance, lacking, path, problems);
        }
        else if (balance.Read(formula, formula, Draws.Typical) is null)
        {
            problems.Add(path, balance.Id, "is no reading that this formula has", "nothing in it counts towards it: name another reading");
        }
    }

    /// <summary>Names what a caller's limits cannot be read of.</summary>
    /// <param name="limits">The limits.</param>
    /// <param name="formula">The formula; null where it could not be read.</param>
    /// <param name="also">What is to come in besides.</param>
    /// <param name="problems">Where to add them.</param>
    public static void RequireLimits(IEnumerable<Hold> limits, Domain.Formula? formula, IEnumerable<Ingredient> also, ProblemList problems)
    {
        foreach (var balance in limits.Select(limit => limit.Balance).OfType<PerPortion>())
        {
            var lacking = (formula?.Lines.Select(line => line.Ingredient) ?? []).Concat(also).Distinct()
                .Where(ingredient => !balance.CanRead(ingredient)).ToList();
            if (lacking.Count > 0)
            {
                Lacking(balance, lacking, "habits.limits", problems);
            }
        }
    }

    private static void Lacking(Balance balance, IReadOnlyCollection<Ingredient> lacking, string path, ProblemList problems)
    {
        var ids = lacking.Select(ingredient => ingredient.Id).ToList();
        var wayOut = balance.Reads.Contains(Fact.Price)
            ? $"write down what each costs, as 'pantry measure {ids[0]} --price 12' for a kilogram"
            : "add it to the table or packet that the ingredient came from, or name another reading";
        problems.Add(path, balance.Id, $"is not known of {Kitchen.Wording.Phrases.List(ids)}", wayOut);
    }

    /// <summary>Names the ingredient where it cannot be solved with.</summary>
    public static void Require(BalanceList balances, Ingredient? ingredient, string path, ProblemList problems)
    {
        if (ingredient is not null && balances.Unknown(ingredient) is { IsEmpty: false } unknown)
        {
            problems.Add(
                path, ResourceName.Of(ingredient), $"cannot be solved with: {string.Join(", ", unknown)} is not known", "add it to the table or packet that the ingredient came from, or name another ingredient");
        }
    }
}
