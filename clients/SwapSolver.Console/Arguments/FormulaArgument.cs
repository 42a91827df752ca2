using System.CommandLine;
using System.CommandLine.Parsing;
using SwapSolver.Console.Files;

namespace SwapSolver.Console.Arguments;

/// <summary>The formula that a verb asks about.</summary>
internal sealed class FormulaArgument : Argument<string>
{
    /// <summary>Names the argument.</summary>
    /// <param name="mayBeMissing">Whether the verb can do without a formula.</param>
    public FormulaArgument(bool mayBeMissing = false)
        : base("FORMULA")
    {
        Description = "A formula file, - for standard input, or a stored formula as formulas/ID.";
        Arity = mayBeMissing ? ArgumentArity.ZeroOrOne : ArgumentArity.ExactlyOne;
        Validators.Add(CheckWord);
    }

    /// <summary>Whose cups and spoons the formula's lines mean; a verb takes it beside the formula.</summary>
    public MeasureSystemOption System { get; } = new(of: " in lines that are not in grams");

    /// <summary>Reads the formula that the command line names.</summary>
    public async Task<Checked<FormulaSubject>> ReadAsync(ParseResult parse, CancellationToken cancel)
    {
        var subject = await FormulaSubject.ReadAsync(parse.GetRequiredValue(this), cancel);
        return parse.GetValue(System) is { } system && subject.IsGood ? subject.Value.In(system) : subject;
    }

    /// <summary>Reads the formula where the command line names one; null where it names none.</summary>
    public async Task<Checked<FormulaSubject?>> ReadIfGivenAsync(ParseResult parse, CancellationToken cancel) =>
        parse.GetValue(this) is not null
            ? (await ReadAsync(parse, cancel)).Then<FormulaSubject?>(subject => subject)
            : Checked<FormulaSubject?>.None;

    private static void CheckWord(ArgumentResult result)
    {
        // Without a word there is nothing to check: the arity says whether one is needed.
        var word = result.Tokens.Count == 1 ? result.Tokens[0].Value : "-";
        if (string.IsNullOrWhiteSpace(word))
        {
            result.AddError("FORMULA is empty. Give the path of a formula file.");
        }
        else if (UnknownWord.IsOption(word) && result.Parent is CommandResult command)
        {
            // An option that does not exist would else be looked for as a file.
            result.AddError(UnknownWord.Option(word, command));
        }
    }
}
