using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Lines.Names;

/// <summary>Ids of the pantry as answers print them, in a line of text: <c>ingredients/hazelnut-flour</c>, <c>usda-12036</c>. Ids of
/// letters alone are read as names; a slash or a digit would be taken for an amount.</summary>
/// <param name="pantry">The ingredients.</param>
internal sealed class PrintedIds(Pantry pantry)
{
    /// <summary>The word that stands in the line where the id stood.</summary>
    public const string Placeholder = "thingnamedbyid";

    private const string Prefix = "ingredients/";

    private static readonly char[] Ends = [' ', '\t', ',', ';', '(', ')', '[', ']', '"'];

    /// <summary>The line with its first such id put into one word, and what it names; null where there is none.</summary>
    /// <param name="text">The line.</param>
    public (string Text, Ingredient? Named) In(string text)
    {
        foreach (var word in text.Split(Ends, StringSplitOptions.RemoveEmptyEntries))
        {
            var isFull = word.StartsWith(Prefix, StringComparison.Ordinal);
            var id = isFull ? word[Prefix.Length..] : word;
            if ((isFull || (id.Contains('-', StringComparison.Ordinal) && id.Any(char.IsAsciiDigit))) && pantry.TryGet(id, out var named))
            {
                return (text.Replace(word, Placeholder, StringComparison.Ordinal), named);
            }
        }

        return (text, null);
    }
}
