using System.Collections.Immutable;
using System.Data;
using System.Globalization;
using Dapper;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Records.Formulas;
using SwapSolver.Records.Jobs;
using SwapSolver.Records.Keys;
using SwapSolver.Records.Storage;
using SwapSolver.Records.Trials;
using SwapSolver.Records.Whole;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Records;

/// <summary>What one kitchen wrote down: its own foods and what it measured. Every write is whole or nothing.</summary>
/// <param name="place">Folder of the records, which is made with the first write, or the connection string of a PostgreSQL database.</param>
public sealed class KitchenRecords(string place) : IDisposable
{
    private static readonly ImmutableDictionary<string, Fact> Facts = Fact.All.ToImmutableDictionary(fact => fact.Id, StringComparer.Ordinal);

    /// <summary>The stamp of records that are not there.</summary>
    private const long NothingWritten = 0;

    private readonly Database database = Database.At(place);

    private VersionAt? seen;

    private FormulaRecords? formulas;

    private KeyRecords? keys;

    private WholeRecords? whole;

    private TrialRecords? trials;

    private JobRecords? jobs;

    /// <summary>The formulas and their revisions.</summary>
    public FormulaRecords Formulas => formulas ??= new FormulaRecords(database);

    /// <summary>The records as a whole.</summary>
    public WholeRecords Whole => whole ??= new WholeRecords(database);

    /// <summary>What was baked and measured.</summary>
    public TrialRecords Trials => trials ??= new TrialRecords(database);

    /// <summary>Work that goes on by itself.</summary>
    public JobRecords Jobs => jobs ??= new JobRecords(database);

    /// <summary>The keys to this kitchen.</summary>
    public KeyRecords Keys => keys ??= new KeyRecords(database);

    /// <summary>Changes with every write of anything, whoever writes, and costs little to look at; null where that cannot be told without reading.</summary>
    /// <exception cref="RecordsFaultException">The records cannot be reached.</exception>
    public long? Stamp => database.Stamp;

    /// <summary>Goes up with every change of an ingredient's facts, whoever made it; 0 where nothing was ever written.</summary>
    public long Version => VersionOf(null);

    /// <summary>The same for who looked at the stamp already.</summary>
    /// <param name="stamp">As <see cref="Stamp"/>; null where it was not looked at, or cannot be told.</param>
    /// <exception cref="RecordsFaultException">The records cannot be reached.</exception>
    public long VersionOf(long? stamp)
    {
        if (stamp is null && !database.Exists)
        {
            return 0;
        }

        // The stamp before the reading: what is written between the two is read again the next time.
        stamp ??= database.Stamp;
        if (seen is { } before && before.Stamp == stamp)
        {
            return before.Version;
        }

        if (!database.Exists)
        {
            return 0;
        }

        var version = database.Read((connection, transaction) => connection.ExecuteScalar<long>("SELECT changes FROM change_counter", transaction: transaction));
        // Under a stamp that was looked at before anything was written nothing is remembered: whoever sees it again may have no records.
        if (stamp is { } at and not NothingWritten)
        {
            seen = new VersionAt(at, version);
        }

        return version;
    }

    /// <summary>Tells these records from any other for as long as they are kept in their place; null where nothing was ever written.</summary>
    public string? Identity()
    {
        const string find = "SELECT id FROM records_identity ORDER BY id LIMIT 1";
        if (!database.Exists)
        {
            return null;
        }

        return database.Read((connection, transaction) => connection.QuerySingleOrDefault<string>(find, transaction: transaction)) ?? database.Write((connection, transaction) =>
        {
            connection.Execute(
                "INSERT INTO records_identity (id) SELECT @id WHERE NOT EXISTS (SELECT 1 FROM records_identity)", new { id = Guid.NewGuid().ToString("N") }, transaction);
            return (true, connection.QuerySingle<string>(find, transaction: transaction));
        });
    }

    /// <summary>Everything that was written down, as it stood at one moment.</summary>
    /// <param name="before">What was read before: a food that stands there in the same words is taken over as it is, with
    /// what was read of it. Null: nothing was.</param>
    public KitchenNotes Read(KitchenNotes? before = null)
    {
        if (!database.Exists)
        {
            return KitchenNotes.None;
        }

        var known = before?.Written.ToDictionary(food => food.Id, StringComparer.Ordinal) ?? [];
        return database.Read((connection, transaction) => new KitchenNotes(
            connection.ExecuteScalar<long>("SELECT changes FROM change_counter", transaction: transaction),
            [
                .. connection.Query<FoodRow>("SELECT id AS Id, document AS Document FROM foods ORDER BY id", transaction: transaction)
                    .Select(row => known.TryGetValue(row.Id, out var same) && same.Document == row.Document ? same : WrittenFood.Of(row.Id, row.Document)),
            ],
            [
                .. connection.Query<MeasuredRow>(
                    "SELECT ingredient AS Ingredient, fact AS Fact, low AS Low, typical AS Typical, high AS High, method AS Method FROM measured_facts ORDER BY ingredient, fact",
                    transaction: transaction)
                    .Select(row => new MeasuredFact(row.Ingredient, Facts[row.Fact], new Range(row.Low, row.Typical, row.High), row.Method)),
            ],
            [
                .. connection.Query<WeightRow>(
                    "SELECT ingredient AS Ingredient, measure AS Measure, amount AS Amount, grams AS Grams, source AS Source FROM household_weights ORDER BY ingredient, measure, amount",
                    transaction: transaction)
                    .Select(row => row.Read()),
            ]));
    }

    /// <summary>Whether two foods are the same to the digit, so that writing one where the other stands changes nothing.</summary>
    public static bool AreSame(StatedFood one, StatedFood other) => one.Id == other.Id && FoodDocument.Write(one) == FoodDocument.Write(other);

    /// <summary>One of the kitchen's own foods; null where there is none of this id.</summary>
    /// <param name="id">Its id.</param>
    public StatedFood? Find(string id)
    {
        if (!database.Exists)
        {
            return null;
        }

        return database.Read((connection, transaction) => connection.QuerySingleOrDefault<string>("SELECT document FROM foods WHERE id = @id", new { id }, transaction)) is { } document
            ? FoodDocument.Read(id, document)
            : null;
    }

    /// <summary>Writes foods down; one that stands there in the same words is left as it is.</summary>
    /// <param name="foods">The foods; ids are unique.</param>
    public RowsWritten Put(IReadOnlyCollection<StatedFood> foods)
    {
        return Put(
            [.. foods.Select(food => new FoodRow(food.Id, FoodDocument.Write(food)))],
            static (row, connection, transaction) => connection.QuerySingleOrDefault<FoodRow>("SELECT id AS Id, document AS Document FROM foods WHERE id = @Id", row, transaction),
            static (row, connection, transaction) => connection.Execute(
                "INSERT INTO foods (id, document) VALUES (@Id, @Document) ON CONFLICT (id) DO UPDATE SET document = excluded.document", row, transaction));
    }

    /// <summary>Writes household weights down; one that stands there to the digit is left as it is.</summary>
    /// <param name="weights">The weights; each measure of an ingredient is there once.</param>
    public RowsWritten Put(IReadOnlyCollection<HouseholdWeight> weights)
    {
        return Put(
            [.. weights.Select(WeightRow.Of)],
            static (row, connection, transaction) => connection.QuerySingleOrDefault<WeightRow>(
                "SELECT ingredient AS Ingredient, measure AS Measure, amount AS Amount, grams AS Grams, source AS Source FROM household_weights WHERE ingredient = @Ingredient AND measure = @Measure AND amount = @Amount",
                row,
                transaction),
            static (row, connection, transaction) => connection.Execute(
                """
                INSERT INTO household_weights (ingredient, measure, amount, grams, source)
                VALUES (@Ingredient, @Measure, @Amount, @Grams, @Source)
                ON CONFLICT (ingredient, measure, amount) DO UPDATE
                SET grams = excluded.grams, source = excluded.source
                """,
                row,
                transaction));
    }

    /// <summary>Writes down what was measured; an older figure of the same fact is replaced.</summary>
    public void Put(IReadOnlyCollection<MeasuredFact> measured)
    {
        // Nothing to write down makes no file.
        if (measured.Count > 0)
        {
            Write((connection, transaction) => Put(measured, connection, transaction));
        }
    }

    /// <summary>Forgets a food of this kitchen and what it measured of an ingredient. The result is whether there was anything.</summary>
    /// <param name="id">Id of the ingredient.</param>
    public bool Forget(string id)
    {
        var gone = 0;
        if (database.Exists)
        {
            Write((connection, transaction) =>
            {
                gone = connection.Execute("DELETE FROM foods WHERE id = @id", new { id }, transaction)
                    + connection.Execute("DELETE FROM measured_facts WHERE ingredient = @id", new { id }, transaction)
                    + connection.Execute("DELETE FROM household_weights WHERE ingredient = @id", new { id }, transaction);
                return gone > 0;
            });
        }

        return gone > 0;
    }

    /// <inheritdoc/>
    public void Dispose() => database.Dispose();

    /// <summary>Writes, and counts the change.</summary>
    private void Write(Func<IDbConnection, IDbTransaction, bool> write) => database.Write((connection, transaction) =>
    {
        var isChanged = write(connection, transaction);
        if (isChanged)
        {
            connection.Execute("UPDATE change_counter SET changes = changes + 1", transaction: transaction);
        }

        return (isChanged, true);
    });

    private static bool Put(IEnumerable<MeasuredFact> measured, IDbConnection connection, IDbTransaction transaction)
    {
        foreach (var one in measured)
        {
            connection.Execute(
                """
                INSERT INTO measured_facts (ingredient, fact, low, typical, high, method)
                VALUES (@Ingredient, @Fact, @Low, @Typical, @High, @Method)
                ON CONFLICT (ingredient, fact) DO UPDATE
                SET low = excluded.low, typical = excluded.typical, high = excluded.high, method = excluded.method
                """,
                new MeasuredRow(one.IngredientId, one.Fact.Id, one.Range.Low, one.Range.Typical, one.Range.High, one.Method),
                transaction);
        }

        return true;
    }

    /// <summary>Writes rows that are not there to the digit.</summary>
    private RowsWritten Put<TRow>(
        IReadOnlyCollection<TRow> rows, Func<TRow, IDbConnection, IDbTransaction, TRow?> find, Action<TRow, IDbConnection, IDbTransaction> write)
        where TRow : class
    {
        int added = 0, changed = 0;
        // Nothing to write down makes no file.
        if (rows.Count > 0)
        {
            Write((connection, transaction) =>
            {
                foreach (var row in rows)
                {
                    var before = find(row, connection, transaction);
                    if (row.Equals(before))
                    {
                        continue;
                    }

                    write(row, connection, transaction);
                    _ = before is null ? added++ : changed++;
                }

                return added + changed > 0;
            });
        }

        return new RowsWritten(added, changed, rows.Count - added - changed);
    }

    /// <summary>The version at a stamp.</summary>
    private sealed record VersionAt(long Stamp, long Version);

    // Not private: the code that reads a row is written beside this class, not inside it.
    internal sealed record FoodRow(string Id, string Document);

    internal sealed record MeasuredRow(string Ingredient, string Fact, double Low, double Typical, double High, string Method);

    /// <summary>The amount is written as text: the database keeps no decimal numbers.</summary>
    internal sealed record WeightRow(string Ingredient, string Measure, string Amount, double Grams, string Source)
    {
        public static WeightRow Of(HouseholdWeight weight) => new(
            weight.IngredientId, weight.Measure.Measure, weight.Measure.Amount.ToString("0.############", CultureInfo.InvariantCulture), weight.Measure.Grams.Value, weight.Measure.Source);

        public HouseholdWeight Read() => new(
            Ingredient, new HouseholdMeasure(decimal.Parse(Amount, CultureInfo.InvariantCulture), Measure, new Grams(Grams), Source, Mark.Published));
    }
}
