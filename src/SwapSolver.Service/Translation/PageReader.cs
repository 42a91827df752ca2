using SwapSolver.Service.Faults;

namespace SwapSolver.Service.Translation;

/// <summary>Reads which page of a list is meant. A token names what the page before ended with, and no place in a count: what
/// is saved or put away between two pages then moves nothing. It belongs to the list that was asked for.</summary>
/// <param name="list">What tells the list from others, as its filter.</param>
/// <param name="problems">What is wrong.</param>
internal sealed class PageReader(string list, ProblemList problems)
{
    /// <summary>Most things on a page.</summary>
    public const int MostPage = 1000;

    private const int UsualPage = 100;

    /// <summary>How many are wanted.</summary>
    public int Size(int size)
    {
        if (size < 0)
        {
            problems.Add("pageSize", size, "is no page size", $"give 0 to {MostPage}");
        }

        return size <= 0 ? UsualPage : Math.Min(size, MostPage);
    }

    /// <summary>What the page before ended with; empty for the first page.</summary>
    public string Last(string token)
    {
        if (string.IsNullOrEmpty(token))
        {
            return string.Empty;
        }

        if (token.StartsWith(Head, StringComparison.Ordinal) && token.Length > Head.Length)
        {
            return token[Head.Length..];
        }

        problems.Add("pageToken", token, "is no token of this list", "give the nextPageToken of the page before, and ask for the same list");
        return string.Empty;
    }

    /// <summary>The token of the next page.</summary>
    public string Token(string last) => Head + last;

    private string Head => $"{list}:";
}
