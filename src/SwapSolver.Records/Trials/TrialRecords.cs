using System.Data;
using Dapper;
using SwapSolver.Records.Formulas;
using SwapSolver.Records.Storage;

namespace SwapSolver.Records.Trials;

/// <summary>What was baked and measured, and what the kitchen chose to learn from it.</summary>
public sealed class TrialRecords
{
    internal const string Columns = "formula AS Formula, number AS Number, revision AS Revision, document AS Document, created AS Created";

    internal const string ChoiceColumns = "fact AS Fact, is_off AS IsOff, forgotten_before AS ForgottenBefore";

    private readonly Database database;

    internal TrialRecords(Database database) => this.database = database;

    /// <summary>One trial; null where there is none.</summary>
    public StoredTrial? Find(string formula, long number) => !database.Exists ? null : database.Read((connection, transaction) => connection.QuerySingleOrDefault<StoredTrial>(
        $"SELECT {Columns} FROM trials WHERE formula = @formula AND number = @number", new { formula, number }, transaction));

    /// <summary>A page of a formula's trials, newest first.</summary>
    /// <param name="formula">Id of the formula.</param>
    /// <param name="before">The number that the page before ended with; null for the first page.</param>
    /// <param name="most">Most trials on it.</param>
    public IReadOnlyList<StoredTrial> List(string formula, long? before, int most) => !database.Exists ? [] : database.Read((connection, transaction) => connection.Query<StoredTrial>(
        $"SELECT {Columns} FROM trials WHERE formula = @formula AND number < @before ORDER BY number DESC LIMIT @most",
        new { formula, before = before ?? long.MaxValue, most },
        transaction).AsList());

    /// <summary>The kitchen's newest trials of all formulas, oldest of them first.</summary>
    /// <param name="most">How many.</param>
    public IReadOnlyList<StoredTrial> Newest(int most) => !database.Exists ? [] : database.Read((connection, transaction) => connection.Query<StoredTrial>(
        $"SELECT {Columns} FROM trials ORDER BY created DESC, formula DESC, number DESC LIMIT @most", new { most }, transaction).Reverse().ToList());

    /// <summary>What was chosen about each learned fact.</summary>
    public IReadOnlyDictionary<string, LearnedChoice> Choices() => !database.Exists ? new Dictionary<string, LearnedChoice>() : database.Read((connection, transaction) =>
        connection.Query<LearnedChoice>($"SELECT {ChoiceColumns} FROM learned_choices", transaction: transaction).ToDictionary(choice => choice.Fact, StringComparer.Ordinal));

    /// <summary>Writes a trial down; the next number is its own. Null where its formula or revision is not there.</summary>
    /// <param name="trial">The trial; its number is not read.</param>
    /// <param name="request">The request; one that was done for another thing gives a trial without a document.</param>
    public Task<StoredTrial?> AddAsync(StoredTrial trial, WriteRequest request) => database.WriteAsync<StoredTrial?>((connection, transaction) =>
    {
        if (DoneRequests.Find(request, connection, transaction) is { } done)
        {
            return (false, done.Fingerprint == request.Fingerprint ? FindNamed(done.Name, connection, transaction) : trial with { Document = string.Empty });
        }

        if (FormulaRecords.Head(trial.Formula, connection, transaction) is not { } head || trial.Revision > head.Newest)
        {
            return (false, null);
        }

        var number = 1 + connection.ExecuteScalar<long>("SELECT COALESCE(MAX(number), 0) FROM trials WHERE formula = @Formula", trial, transaction);
        var written = trial with { Number = number };
        Insert(written, connection, transaction);
        DoneRequests.Remember(request, $"{written.Formula}/{written.Number}", connection, transaction);
        Count(connection, transaction);
        return (!request.IsOnlyTried, written);
    });

    /// <summary>Writes a choice down.</summary>
    public Task ChooseAsync(LearnedChoice choice) => database.WriteAsync((connection, transaction) =>
    {
        Insert(choice, connection, transaction);
        Count(connection, transaction);
        return (true, true);
    });

    internal static void Insert(StoredTrial trial, IDbConnection connection, IDbTransaction transaction) => connection.Execute(
        "INSERT INTO trials (formula, number, revision, document, created) VALUES (@Formula, @Number, @Revision, @Document, @Created)", trial, transaction);

    internal static void Insert(LearnedChoice choice, IDbConnection connection, IDbTransaction transaction) => connection.Execute(
        """
        INSERT INTO learned_choices (fact, is_off, forgotten_before) VALUES (@Fact, @IsOff, @ForgottenBefore)
        ON CONFLICT (fact) DO UPDATE SET is_off = excluded.is_off, forgotten_before = excluded.forgotten_before
        """,
        choice,
        transaction);

    /// <summary>What is learned changes the facts that questions are answered by.</summary>
    private static void Count(IDbConnection connection, IDbTransaction transaction) =>
        connection.Execute("UPDATE change_counter SET changes = changes + 1", transaction: transaction);

    private static StoredTrial? FindNamed(string name, IDbConnection connection, IDbTransaction transaction)
    {
        var place = name.LastIndexOf('/');
        return connection.QuerySingleOrDefault<StoredTrial>(
            $"SELECT {Columns} FROM trials WHERE formula = @formula AND number = @number",
            new { formula = name[..place], number = long.Parse(name[(place + 1)..], System.Globalization.CultureInfo.InvariantCulture) },
            transaction);
    }
}
