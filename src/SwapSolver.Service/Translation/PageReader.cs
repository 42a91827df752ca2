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

    /// <summary>A page of a short list that is at hand whole, and the token of the next.</summary>
    /// <param name="all">Everything, in the order of the list.</param>
    /// <param name="size">How many the caller wants.</param>
    /// <param name="token">The caller's token.</param>
    /// <param name="idOf">What tells one from the others.</param>
    /// <exception cref="Grpc.Core.RpcException">INVALID_ARGUMENT: size or token are none.</exception>
    public (IReadOnlyList<T> Items, string Next) Of<T>(IReadOnlyList<T> all, int size, string token, Func<T, string> idOf)
    {
        var (most, last) = (Size(size), Last(token));
        var start = last.Length == 0 ? 0 : all.Index().FirstOrDefault(pair => idOf(pair.Item) == last, (-1, default!)).Index + 1;
        if (last.Length > 0 && start == 0)
        {
            problems.Add("pageToken", token, "is no token of this list", "give the nextPageToken of the page before");
        }

        problems.ThrowIfAny();
        IReadOnlyList<T> items = [.. all.Skip(start).Take(most)];
        return (items, start + most < all.Count ? Token(idOf(items[^1])) : string.Empty);
    }

    /// <summary>The token of the next page.</summary>
    public string Token(string last) => Head + last;

    private string Head => $"{list}:";
}
