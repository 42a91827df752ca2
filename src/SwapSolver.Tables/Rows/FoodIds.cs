using System.Text;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Tables.Columns;

namespace SwapSolver.Tables.Rows;

/// <summary>Reads or makes the id of a row's food.</summary>
internal static class FoodIds
{
    private const int NumberLength = 5;

    /// <summary>The USDA food number of a row, five digits; null where it has none. The result is false where it cannot
    /// be read; the problem is then added.</summary>
    public static bool TryNumber(TableRow row, out string? number)
    {
        var text = row[FoodColumns.Number];
        number = text.Length == 0 ? null : text.PadLeft(NumberLength, '0');
        // Spreadsheets drop the nought in front: 1001 is 01001.
        if (number is null || (text.Length is NumberLength or NumberLength - 1 && text.All(char.IsAsciiDigit)))
        {
            return true;
        }

        row.Refuse(FoodColumns.Number, "is no food number", "write the five digits of the Standard Reference, as 01001, or leave the field empty");
        return false;
    }

    /// <summary>The id that a row gives; null with a problem where it cannot be one. The field is not blank.</summary>
    public static string? Given(TableRow row)
    {
        var id = row[FoodColumns.Id];
        if (FoodId.CanBe(id))
        {
            return id;
        }

        row.Refuse(FoodColumns.Id, "is no id", FoodId.WayOut);
        return null;
    }

    /// <summary>An id made of a description; null with a problem where none can be made.</summary>
    public static string? OfDescription(TableRow row, string description)
    {
        var id = new StringBuilder(FoodId.MostLetters);
        foreach (var letter in description.TakeWhile(_ => id.Length < FoodId.MostLetters))
        {
            if (char.IsAsciiLetterOrDigit(letter))
            {
                id.Append(char.ToLowerInvariant(letter));
            }
            else if (id.Length > 0 && id[^1] != '-')
            {
                id.Append('-');
            }
        }

        var made = id.ToString().TrimEnd('-');
        if (made.Length > 0)
        {
            return made;
        }

        row.Refuse(FoodColumns.Description, "makes no id", "give the food one in a column id, as my-coconut-flour");
        return null;
    }
}
