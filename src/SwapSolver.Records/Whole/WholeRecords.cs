using System.Data;
using Dapper;
using SwapSolver.Records.Formulas;
using SwapSolver.Records.Keys;
using SwapSolver.Records.Storage;
using SwapSolver.Records.Trials;

namespace SwapSolver.Records.Whole;

/// <summary>The records as a whole: to a backup and back, and from one engine to the other. Requests that were done, and
/// jobs, are not among them: they belong to the place where they were done, and to the records that it had then.</summary>
public sealed class WholeRecords
{
    /// <summary>Every table, so that what hangs on another goes first when all is taken away.</summary>
    private static readonly string[] Tables =
        ["job_results", "job_shards", "jobs", "learned_choices", "trials", "revisions", "formulas", "requests", "api_keys", "household_weights", "measured_facts", "foods"];

    private readonly Database database;

    internal WholeRecords(Database database) => this.database = database;

    /// <summary>Whether anything is written down, keys aside: a kitchen's first key is made before its records are taken in.</summary>
    public bool IsEmpty => !database.Exists || database.Read((connection, transaction) => Tables.Except(["job_results", "job_shards", "jobs", "requests", "api_keys"]).All(table =>
        connection.ExecuteScalar<long>($"SELECT COUNT(*) FROM (SELECT 1 AS one FROM {table} LIMIT 1) AS first", transaction: transaction) == 0));

    /// <summary>Gives every record, as all stood at one moment, in one order on every engine.</summary>
    /// <param name="give">Takes each.</param>
    public void Read(Action<RecordRow> give)
    {
        if (database.Exists)
        {
            database.Read((connection, transaction) =>
            {
                foreach (var row in Rows(connection, transaction))
                {
                    give(row);
                }

                return true;
            });
        }
    }

    /// <summary>Puts records in the place of all that are there, whole or not at all. Keys that are there stay where the
    /// records bring none of their id.</summary>
    /// <param name="rows">The records; a formula stands before its revisions, and they before their trials.</param>
    /// <returns>How many.</returns>
    public Task<int> ReplaceAsync(IEnumerable<RecordRow> rows) => database.WriteAsync((connection, transaction) =>
    {
        foreach (var table in Tables.Except(["api_keys"]))
        {
            connection.Execute($"DELETE FROM {table}", transaction: transaction);
        }

        var count = 0;
        foreach (var row in rows)
        {
            Insert(row, connection, transaction);
            count++;
        }

        connection.Execute("UPDATE change_counter SET changes = changes + 1", transaction: transaction);
        return (true, count);
    });

    /// <summary>Writes a copy into a file, as all stood at one moment; null where the engine is no embedded one.</summary>
    /// <param name="file">The file.</param>
    public bool CopyTo(string file)
    {
        if (database is not SqliteDatabase embedded)
        {
            return false;
        }

        embedded.CopyTo(file);
        return true;
    }

    /// <summary>What is wrong with a copy; empty where it is whole.</summary>
    /// <param name="file">The copy.</param>
    /// <exception cref="RecordsFaultException">It is no copy of records.</exception>
    public static IReadOnlyList<string> FindDamage(string file)
    {
        using var copy = new SqliteDatabase(file);
        return copy.FindDamage();
    }

    /// <summary>Every record of a copy.</summary>
    /// <param name="file">The copy; it is brought to the newest schema.</param>
    public static IReadOnlyList<RecordRow> ReadCopy(string file)
    {
        using var copy = new SqliteDatabase(file);
        var rows = new List<RecordRow>();
        new WholeRecords(copy).Read(rows.Add);
        return rows;
    }

    private static IEnumerable<RecordRow> Rows(IDbConnection connection, IDbTransaction transaction)
    {
        // Each is read by code of its own row, which a method for rows of any kind could not have.
        return connection.Query<RecordRow.Food>("SELECT id AS Id, document AS Document FROM foods ORDER BY id", transaction: transaction, buffered: false).Cast<RecordRow>()
            .Concat(connection.Query<RecordRow.Measured>(
                "SELECT ingredient AS Ingredient, fact AS Fact, low AS Low, typical AS Typical, high AS High, method AS Method FROM measured_facts ORDER BY ingredient, fact",
                transaction: transaction,
                buffered: false))
            .Concat(connection.Query<RecordRow.Weight>(
                "SELECT ingredient AS Ingredient, measure AS Measure, amount AS Amount, grams AS Grams, source AS Source FROM household_weights ORDER BY ingredient, measure, amount",
                transaction: transaction,
                buffered: false))
            .Concat(connection.Query<FormulaHead>($"SELECT {FormulaRecords.HeadColumns} FROM formulas ORDER BY id", transaction: transaction, buffered: false)
                .Select(head => new RecordRow.Formula(head)))
            .Concat(connection.Query<Revision>($"SELECT {FormulaRecords.RevisionColumns} FROM revisions ORDER BY formula, number", transaction: transaction, buffered: false)
                .Select(revision => new RecordRow.OneRevision(revision)))
            .Concat(connection.Query<StoredTrial>($"SELECT {TrialRecords.Columns} FROM trials ORDER BY formula, number", transaction: transaction, buffered: false)
                .Select(trial => new RecordRow.OneTrial(trial)))
            .Concat(connection.Query<LearnedChoice>($"SELECT {TrialRecords.ChoiceColumns} FROM learned_choices ORDER BY fact", transaction: transaction, buffered: false)
                .Select(choice => new RecordRow.OneChoice(choice)))
            .Concat(connection.Query<StoredKey>($"SELECT {KeyRecords.Columns} FROM api_keys ORDER BY id", transaction: transaction, buffered: false)
                .Select(key => new RecordRow.OneKey(key)));
    }

    private static void Insert(RecordRow row, IDbConnection connection, IDbTransaction transaction)
    {
        switch (row)
        {
            case RecordRow.Food food:
                connection.Execute("INSERT INTO foods (id, document) VALUES (@Id, @Document)", food, transaction);
                break;
            case RecordRow.Measured measured:
                connection.Execute("INSERT INTO measured_facts (ingredient, fact, low, typical, high, method) VALUES (@Ingredient, @Fact, @Low, @Typical, @High, @Method)", measured, transaction);
                break;
            case RecordRow.Weight weight:
                connection.Execute("INSERT INTO household_weights (ingredient, measure, amount, grams, source) VALUES (@Ingredient, @Measure, @Amount, @Grams, @Source)", weight, transaction);
                break;
            case RecordRow.Formula formula:
                FormulaRecords.Insert(formula.Head, connection, transaction);
                break;
            case RecordRow.OneRevision revision:
                FormulaRecords.Insert(revision.Revision, connection, transaction);
                break;
            case RecordRow.OneTrial trial:
                TrialRecords.Insert(trial.Trial, connection, transaction);
                break;
            case RecordRow.OneChoice choice:
                TrialRecords.Insert(choice.Choice, connection, transaction);
                break;
            case RecordRow.OneKey key:
                connection.Execute("DELETE FROM api_keys WHERE id = @Id", key.Key, transaction);
                KeyRecords.Insert(key.Key, connection, transaction);
                break;
        }
    }
}
