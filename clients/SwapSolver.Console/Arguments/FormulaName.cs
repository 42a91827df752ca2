using System.CommandLine;

namespace SwapSolver.Console.Arguments;

/// <summary>Names of stored formulas as they are typed, bare or as resource names.</summary>
internal sealed class FormulaName : Argument<string>
{
    private const string Collection = "formulas/";

    /// <summary>Names the argument.</summary>
    public FormulaName()
        : base("NAME")
    {
        Description = "A stored formula, as formulas/hazelnut-tin-loaf or hazelnut-tin-loaf.";
    }

    /// <summary>The resource name, <c>formulas/{id}</c>.</summary>
    public static string ToResourceName(string text)
    {
        var id = text.Trim();
        return id.Length == 0 || id.StartsWith(Collection, StringComparison.Ordinal) ? id : Collection + id;
    }

    /// <summary>The id of a resource name.</summary>
    public static string Id(string name) => name.StartsWith(Collection, StringComparison.Ordinal) ? name[Collection.Length..] : name;

    /// <summary>The name that the command line gives.</summary>
    public string Read(ParseResult parse) => ToResourceName(parse.GetRequiredValue(this));
}
