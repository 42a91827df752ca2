using System.Collections.Immutable;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Tables.Columns;

namespace SwapSolver.Tables.Rows;

/// <summary>Reads the allergens that a row states. What is not stated is not known, and never taken to be none.</summary>
/// <param name="known">The allergens of both lists.</param>
internal sealed class AllergenReader(ImmutableArray<AllergenName> known)
{
    private const string None = "none";

    /// <summary>The stated allergens; null where none were stated. The result is false where a field cannot be read; the
    /// problems are then added.</summary>
    public bool TryRead(TableRow row, out StatedAllergens? stated)
    {
        stated = null;
        if (!TryRead(row, FoodColumns.Contains, out var contains) || !TryRead(row, FoodColumns.MayContain, out var mayContain))
        {
            return false;
        }

        if (contains is null && mayContain is not null)
        {
            row.RefuseAll(
                FoodColumns.Contains, "what the food may contain is stated, and what it contains is not", $"write its allergens, or '{None}' where the packet names none");
            return false;
        }

        stated = contains is { } ids ? new StatedAllergens(ids, mayContain ?? []) : null;
        return true;
    }

    private bool TryRead(TableRow row, string column, out ImmutableArray<string>? ids)
    {
        ids = null;
        var words = row[column].Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (row[column].Length == 0 || words is [None])
        {
            ids = row[column].Length == 0 ? null : [];
            return true;
        }

        var found = words.Select(Find).ToList();
        var unknown = found.IndexOf(null);
        if (words.Length > 0 && unknown < 0)
        {
            ids = [.. found.OfType<string>().Distinct().Order(StringComparer.Ordinal)];
            return true;
        }

        row.Refuse(
            column,
            words.Length == 0 ? "names no allergen" : $"has '{words[unknown]}', which is no allergen that is known",
            words.Length == 0
                ? $"write ids with ';' between them, or '{None}'"
                : NearestNames.WayOut(words[unknown], known.Select(allergen => allergen.Id).Append(None)));
        return false;
    }

    private string? Find(string word) => known.FirstOrDefault(allergen => allergen.IsCalled(word))?.Id;
}
