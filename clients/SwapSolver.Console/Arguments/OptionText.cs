using System.CommandLine.Parsing;

namespace SwapSolver.Console.Arguments;

/// <summary>Reads the text behind an option, and turns what is wrong with it into usage errors that name the option.</summary>
internal static class OptionText
{
    /// <summary>Reads the one value of an option.</summary>
    public static T? One<T>(ArgumentResult result, string option, Func<string, Checked<T>> read)
        where T : struct
    {
        var value = read(result.Tokens[0].Value);
        return Report(result, option, value) ? value.Value : null;
    }

    /// <summary>Reads the value of an option each time it is given.</summary>
    public static T[] Each<T>(ArgumentResult result, string option, Func<string, Checked<T>> read)
    {
        var values = new List<T>();
        foreach (var token in result.Tokens)
        {
            var value = read(token.Value);
            if (Report(result, option, value))
            {
                values.Add(value.Value);
            }
        }

        return [.. values];
    }

    /// <summary>Reads names with commas between, given once or several times.</summary>
    /// <param name="result">What was given.</param>
    /// <param name="option">The option.</param>
    /// <param name="wayOut">What to write where it names nothing.</param>
    public static string[] Names(ArgumentResult result, string option, string wayOut)
    {
        string[] names = [.. result.Tokens.SelectMany(token => SplitAtCommas(token.Value))];
        if (names.Length == 0)
        {
            result.AddError($"{option} names nothing. {wayOut}");
        }

        return names;
    }

    /// <summary>The names in a text, with commas between.</summary>
    public static string[] SplitAtCommas(string text) => text.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private static bool Report<T>(ArgumentResult result, string option, Checked<T> value)
    {
        foreach (var problem in value.Problems)
        {
            result.AddError($"{option}: {problem}");
        }

        return value.IsGood;
    }
}
