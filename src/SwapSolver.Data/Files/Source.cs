namespace SwapSolver.Data.Files;

/// <summary>One entry of the bibliography.</summary>
/// <param name="Author">Who wrote it.</param>
/// <param name="Title">What it is called.</param>
/// <param name="Year">When it appeared; null where not known.</param>
/// <param name="Place">Table, page or section; empty where the whole is meant.</param>
/// <param name="Note">How the figures were taken or chosen; empty where there is nothing to say.</param>
public sealed record Source(string Author, string Title, int? Year, string Place, string Note)
{
    /// <summary>The entry in one line.</summary>
    public override string ToString()
    {
        var entry = string.Join(", ", new[] { Author, Title, Year?.ToString(System.Globalization.CultureInfo.InvariantCulture), Place }
            .Where(part => !string.IsNullOrEmpty(part)));
        return Note.Length == 0 ? entry : $"{entry} ({Note})";
    }
}
