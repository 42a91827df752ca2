using System.Runtime.CompilerServices;
using System.Security.Cryptography;
using System.Text;
using CsvHelper;
using Google.Protobuf;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Files;
using SwapSolver.V1;
using Diet = SwapSolver.V1.VaryFormulaRequest.Types.Diet;

namespace SwapSolver.Console.Answering;

/// <summary>Reads a table of questions a row at a time: the columns formula and question, or columns of fields in place of words.</summary>
internal sealed class QuestionTable : IDisposable
{
    /// <summary>What the columns may be called.</summary>
    public static readonly IReadOnlyList<string> Columns =
        ["formula", "question", "without", "diet", "from", "from_grams", "also_from", "to", "also_to", "also_swaps", "slices", "mass_grams", "factor", "tin", "target"];

    /// <summary>Formulas that are kept read, so that a table of one formula reads its file once.</summary>
    private const int MostKept = 200;

    private const int MarkLetters = 32;

    private static readonly char[] Between = ['+', ';', '|'];

    private readonly Dictionary<string, Checked<FormulaSubject>> formulas = [];

    private readonly Dictionary<string, int> places = [];

    private readonly CsvReader table;

    private QuestionTable(CsvReader table) => this.table = table;

    /// <summary>Opens a table, or says why it is none.</summary>
    public static Checked<QuestionTable> Open(string path)
    {
        var options = new CsvReaderOptions { HasHeader = false, TrimWhitespace = true };
        CsvReader table;
        try
        {
            // A file is read a row at a time, however long it is; what is piped in is read whole.
            table = path == FileSource.StandardInput ? CsvReader.FromText(System.Console.In.ReadToEnd(), options) : CsvReader.FromFile(path, options, FileOptions.SequentialScan);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Checked<QuestionTable>.Bad($"{path}: this table cannot be read: {fault.Message} Give the path of a CSV file with the columns formula and question.");
        }

        var opened = new QuestionTable(table);
        return opened.HeaderProblem() is { } problem ? Checked<QuestionTable>.Bad($"{FileSource.PlaceOf(path)}: {problem}") : opened;
    }

    /// <summary>The rows, in order.</summary>
    public async IAsyncEnumerable<QuestionRow> RowsAsync([EnumeratorCancellation] CancellationToken cancel)
    {
        for (var number = 1; await table.ReadAsync(cancel); number++)
        {
            cancel.ThrowIfCancellationRequested();
            yield return await RowAsync(number, cancel);
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        table.Dispose();
    }

    private string? HeaderProblem()
    {
        if (!table.Read())
        {
            return "this is empty: a line of column names was expected, as formula,question";
        }

        var names = Enumerable.Range(0, table.FieldCount).Select(place => table.GetString(place).Trim().TrimStart('\uFEFF').ToLowerInvariant()).ToList();
        for (var place = 0; place < names.Count; place++)
        {
            places.TryAdd(names[place], place);
        }

        return names.FirstOrDefault(name => !Columns.Contains(name)) is { } other
            ? $"the column '{other}' is not known; the columns are {string.Join(", ", Columns)}"
            : !names.Contains("formula") ? "the column formula is missing; write formula,question and a row a question"
            : names.Count == 1 ? "there is no column beside formula; write formula,question and a row a question"
            : null;
    }

    private async Task<QuestionRow> RowAsync(int number, CancellationToken cancel)
    {
        var request = new AnswerQuestionRequest { Row = number, Question = Cell("question") };
        var problems = new List<string>();
        request.Fields = Fields(problems);
        var subject = await FormulaAsync(Cell("formula"), cancel);
        if (subject.IsGood)
        {
            subject.Value.PutInto(formula => request.Formula = formula, name => request.Name = name);
        }

        problems.AddRange(subject.Problems);
        if (request.Question.Length == 0 && request.Fields is null)
        {
            problems.Add("nothing is asked: write a question, or fill a column of fields");
        }

        var mark = Convert.ToHexString(SHA256.HashData([.. request.ToByteArray(), .. Encoding.UTF8.GetBytes(string.Join('\n', problems))]))[..MarkLetters].ToLowerInvariant();
        request.Mark = mark;
        return problems.Count > 0 ? new QuestionRow(number, null, string.Join("; ", problems), mark) : new QuestionRow(number, request, null, mark);
    }

    /// <summary>The question in fields; null where no column of fields is filled.</summary>
    private AskedFor? Fields(List<string> problems)
    {
        var fields = new AskedFor { From = Cell("from"), AlsoFrom = Cell("also_from"), To = Cell("to"), AlsoTo = Cell("also_to") };
        fields.Without.AddRange(Cell("without").Split(Between, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
        if (Cell("diet") is { Length: > 0 } diet)
        {
            if (Enum.TryParse<Diet>(diet.Replace("-", string.Empty, StringComparison.Ordinal).Replace("_", string.Empty, StringComparison.Ordinal), ignoreCase: true, out var known) && Enum.IsDefined(known))
            {
                fields.Diet = known;
            }
            else
            {
                problems.Add($"diet: '{diet}' is no diet that is known; write VEGETARIAN, VEGAN or DAIRY_FREE");
            }
        }

        if (Number("slices", problems) is { } slices)
        {
            fields.Slices = (int)slices;
            if (slices % 1 != 0)
            {
                problems.Add($"slices: '{Cell("slices")}' is no whole number");
            }
        }

        if (Number("from_grams", problems) is { } goes)
        {
            fields.FromGrams = goes;
        }

        if (Number("mass_grams", problems) is { } mass)
        {
            fields.MassGrams = mass;
        }

        if (Number("factor", problems) is { } factor)
        {
            fields.Factor = factor;
        }

        if (Cell("tin") is { Length: > 0 } tin && Good(TinText.Read(tin), "tin", problems) is { } read)
        {
            fields.Tin = read;
        }

        foreach (var also in Cell("also_swaps").Split(Between, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (Good(SwapBeside(also), "also_swaps", problems) is { } swap)
            {
                fields.AlsoSwaps.Add(new AskedSwap { From = IngredientId.OfResourceName(swap.From), To = IngredientId.OfResourceName(swap.To) });
            }
        }

        foreach (var target in Cell("target").Split(Between, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (Good(TargetText.Read(target), "target", problems) is { } wanted)
            {
                fields.Targets.Add(wanted);
            }
        }

        return fields.CalculateSize() > 0 ? fields : null;
    }

    /// <summary>What is swapped beside the first goes whole, and what comes in is dosed by what balances.</summary>
    private static Checked<Swap> SwapBeside(string text) =>
        SwapText.Read(text) is { IsGood: true, Value: var swap } && (swap.To.Length == 0 || swap.HasGrams || swap.HasFromGrams)
            ? Checked<Swap>.Bad($"'{text}' stands beside another swap: something comes in, and no grams are given. Write X=Y, as butter=coconut-oil.")
            : SwapText.Read(text);

    private double? Number(string column, List<string> problems)
    {
        if (Cell(column) is not { Length: > 0 } cell)
        {
            return null;
        }

        var read = Figure.Read(cell);
        problems.AddRange(read.Problems.Select(problem => $"{column}: {problem}"));
        return read.IsGood ? read.Value : null;
    }

    private static T? Good<T>(Checked<T> read, string column, List<string> problems)
        where T : class
    {
        problems.AddRange(read.Problems.Select(problem => $"{column}: {problem}"));
        return read.IsGood ? read.Value : null;
    }

    private async Task<Checked<FormulaSubject>> FormulaAsync(string place, CancellationToken cancel)
    {
        if (place is "" or FileSource.StandardInput)
        {
            return Checked<FormulaSubject>.Bad($"formula: '{place}' names no formula; write the path of a formula file, or a stored one as formulas/ID");
        }

        if (!formulas.TryGetValue(place, out var known))
        {
            if (formulas.Count == MostKept)
            {
                formulas.Clear();
            }

            formulas[place] = known = await FormulaSubject.ReadAsync(place, cancel);
        }

        return known;
    }

    private string Cell(string column) => places.TryGetValue(column, out var place) && place < table.FieldCount ? table.GetString(place).Trim() : string.Empty;
}
