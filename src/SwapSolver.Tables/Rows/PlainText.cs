using System.Globalization;
using System.Text;
using SwapSolver.Tables.Columns;

namespace SwapSolver.Tables.Rows;

/// <summary>Reads text that a person will read: a food's name, a measure.</summary>
internal static class PlainText
{
    /// <summary>What a decoder writes where it could not read.</summary>
    private const char Unreadable = '\uFFFD';

    /// <summary>The text of a column, blanks and line ends within it made one blank; null with a problem where it is none.</summary>
    /// <param name="row">The row.</param>
    /// <param name="column">The column.</param>
    /// <param name="most">Longest that is read [letters].</param>
    public static string? Read(TableRow row, string column, int most)
    {
        var text = OnOneLine(row[column]);
        if (text.Length == 0)
        {
            row.RefuseAll(column, $"the {row.Header.Printed(column)} is missing", "write it");
            return null;
        }

        if (text.Length > most)
        {
            row.Refuse(column, $"is longer than {most} letters", "write it shorter");
            return null;
        }

        if (text.Any(IsUnreadable))
        {
            row.Refuse(column, "has letters that cannot be read", "save the table as UTF-8 and look at this field");
            return null;
        }

        return text;
    }

    /// <summary>Control and direction marks, halves of letters, and what a decoder could not read.</summary>
    private static bool IsUnreadable(char letter) => letter == Unreadable
        || char.GetUnicodeCategory(letter) is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.Surrogate or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned;

    private static string OnOneLine(string text)
    {
        var line = new StringBuilder(text.Length);
        foreach (var letter in text)
        {
            if (!char.IsWhiteSpace(letter))
            {
                line.Append(letter);
            }
            else if (line.Length > 0 && line[^1] != ' ')
            {
                line.Append(' ');
            }
        }

        return line.ToString().TrimEnd();
    }
}
