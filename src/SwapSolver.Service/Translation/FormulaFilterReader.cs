using System.Collections.Immutable;
using System.Text.RegularExpressions;
using SwapSolver.Records.Formulas;
using SwapSolver.Service.Faults;

namespace SwapSolver.Service.Translation;

/// <summary>Reads the filter of a list of formulas: terms joined by AND.</summary>
internal static partial class FormulaFilterReader
{
    private const int MostTerms = 10;

    private const int MostLetters = 200;

    /// <summary>The filter; where problems were added it is not to be used.</summary>
    public static FormulaFilter Read(string text, bool withPutAway, ProblemList problems)
    {
        var filter = FormulaFilter.InUse with { WithPutAway = withPutAway };
        if (string.IsNullOrWhiteSpace(text))
        {
            return filter;
        }

        var terms = text.Length > MostLetters ? [] : And().Split(text.Trim());
        if (terms.Length is 0 or > MostTerms)
        {
            problems.Add("filter", text, "is too long", $"give at most {MostTerms} terms and {MostLetters} letters");
            return filter;
        }

        var words = ImmutableArray.CreateBuilder<string>();
        foreach (var term in terms)
        {
            if (Name().Match(term) is { Success: true } name)
            {
                words.Add(name.Groups[1].Success ? name.Groups[1].Value : name.Groups[2].Value);
            }
            else if (Published().Match(term) is { Success: true } published)
            {
                filter = filter with { IsPublished = published.Groups[1].Value == "true" };
            }
            else
            {
                problems.Add("filter", term, "is no term of a filter", "give displayName:WORD, displayName:\"SOME WORDS\", published=true or published=false, joined by AND");
            }
        }

        return filter with { Words = words.ToImmutable() };
    }

    [GeneratedRegex(@"\s+AND\s+")]
    private static partial Regex And();

    [GeneratedRegex("^displayName\\s*:\\s*(?:\"([^\"]+)\"|(\\S+))$")]
    private static partial Regex Name();

    [GeneratedRegex(@"^published\s*=\s*(true|false)$")]
    private static partial Regex Published();
}
