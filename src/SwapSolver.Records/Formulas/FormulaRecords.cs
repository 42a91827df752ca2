using System.Data;
using System.Security.Cryptography;
using System.Text;
using Dapper;
using SwapSolver.Records.Storage;

namespace SwapSolver.Records.Formulas;

/// <summary>The kitchen's formulas and their revisions. A change is whole or nothing, and no revision is ever changed.</summary>
public sealed class FormulaRecords
{
    internal const string HeadColumns =
        "id AS Id, display_name AS DisplayName, newest AS Newest, published AS Published, edition AS Edition, etag AS Etag, created AS Created, updated AS Updated, deleted AS Deleted";

    internal const string RevisionColumns =
        "formula AS Formula, number AS Number, document AS Document, note AS Note, goals AS Goals, created AS Created";

    private const int EtagLetters = 16;

    private readonly Database database;

    internal FormulaRecords(Database database) => this.database = database;

    /// <summary>Where a formula stands; null where there is none.</summary>
    /// <param name="id">Its id.</param>
    public FormulaHead? Find(string id) => database.Exists ? database.Read((connection, transaction) => Head(id, connection, transaction)) : null;

    /// <summary>Where a formula stands, and one of its revisions; null where there is none.</summary>
    /// <param name="id">Id of the formula.</param>
    /// <param name="number">Number of the revision; null for the newest.</param>
    public (FormulaHead Head, Revision Revision)? Find(string id, long? number) => !database.Exists ? null : database.Read<(FormulaHead, Revision)?>((connection, transaction) =>
        Head(id, connection, transaction) is { } head && FindRevision(id, number ?? head.Newest, connection, transaction) is { } revision ? (head, revision) : null);

    /// <summary>A page of formulas, by id.</summary>
    /// <param name="after">The id that the page before ended with; empty for the first page.</param>
    /// <param name="most">Most formulas on it.</param>
    /// <param name="filter">Which are meant.</param>
    public IReadOnlyList<FormulaHead> List(string after, int most, FormulaFilter filter)
    {
        if (!database.Exists)
        {
            return [];
        }

        var conditions = new StringBuilder("id > @after");
        conditions.Append(filter.WithPutAway ? string.Empty : " AND deleted IS NULL");
        conditions.Append(filter.IsPublished switch { true => " AND published IS NOT NULL", false => " AND published IS NULL", null => string.Empty });
        var values = new DynamicParameters();
        values.Add("after", after);
        values.Add("most", most);
        foreach (var (word, place) in filter.Words.Select((word, place) => (word, place)))
        {
            conditions.Append(System.Globalization.CultureInfo.InvariantCulture, $" AND search_text LIKE @word{place} ESCAPE '!'");
            values.Add($"word{place}", $"%{Escaped(SearchText(word))}%");
        }

        return database.Read((connection, transaction) => connection.Query<FormulaHead>(
            $"SELECT {HeadColumns} FROM formulas WHERE {conditions} ORDER BY id LIMIT @most", values, transaction).AsList());
    }

    /// <summary>A page of revisions, newest first.</summary>
    /// <param name="id">Id of the formula.</param>
    /// <param name="before">The number that the page before ended with; null for the first page.</param>
    /// <param name="most">Most revisions on it.</param>
    public IReadOnlyList<Revision> ListRevisions(string id, long? before, int most) => !database.Exists ? [] : database.Read((connection, transaction) => connection.Query<Revision>(
        $"SELECT {RevisionColumns} FROM revisions WHERE formula = @id AND number < @before ORDER BY number DESC LIMIT @most",
        new { id, before = before ?? long.MaxValue, most },
        transaction).AsList());

    /// <summary>Ids that begin as this one does: where a name is mistyped, it is mostly not in its first letters.</summary>
    /// <param name="beginning">The first letters.</param>
    /// <param name="most">Most ids.</param>
    public IReadOnlyList<string> IdsFrom(string beginning, int most) => !database.Exists ? [] : database.Read((connection, transaction) => connection.Query<string>(
        "SELECT id FROM formulas WHERE id >= @beginning AND deleted IS NULL ORDER BY id LIMIT @most", new { beginning, most }, transaction).AsList());

    /// <summary>Saves a new formula.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="draft">The formula.</param>
    /// <param name="request">The request.</param>
    public Task<Changed> CreateAsync(string id, FormulaDraft draft, WriteRequest request) => ChangeAsync(id, null, request, (head, connection, transaction) =>
        head is not null ? new Changed(Outcome.AlreadyThere, head) : new Changed(Outcome.Done, First(id, draft, request, connection, transaction)));

    /// <summary>Saves a formula as a new revision; the same formula again, without a new word to it, changes nothing.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="draft">The formula.</param>
    /// <param name="etag">Tag of the state it was made from; empty where the caller does not mind.</param>
    /// <param name="mayBeNew">Saves it as a new formula where there is none.</param>
    /// <param name="request">The request.</param>
    public Task<Changed> UpdateAsync(string id, FormulaDraft draft, string etag, bool mayBeNew, WriteRequest request) => ChangeAsync(id, etag, request, (head, connection, transaction) =>
    {
        if (head is null)
        {
            return mayBeNew ? new Changed(Outcome.Done, First(id, draft, request, connection, transaction)) : new Changed(Outcome.NotThere, null);
        }

        if (head.Deleted is not null)
        {
            return new Changed(Outcome.PutAway, head);
        }

        var newest = FindRevision(id, head.Newest, connection, transaction)!;
        if (newest.Document == draft.Document && (draft.Note.Length == 0 || draft.Note == newest.Note) && (draft.Goals == newest.Goals || draft.Goals == "[]"))
        {
            return new Changed(Outcome.Done, head);
        }

        var revision = new Revision(id, head.Newest + 1, draft.Document, draft.Note, draft.Goals, request.At);
        Insert(revision, connection, transaction);
        return Keep(head with { DisplayName = draft.DisplayName, Newest = revision.Number }, request, connection, transaction);
    });

    /// <summary>Puts a formula away.</summary>
    public Task<Changed> DeleteAsync(string id, string etag, WriteRequest request) => ChangeAsync(id, etag, request, (head, connection, transaction) => head switch
    {
        null => new Changed(Outcome.NotThere, null),
        { Deleted: not null } => new Changed(Outcome.Done, head),
        { Published: not null } => new Changed(Outcome.Published, head),
        _ => Keep(head with { Deleted = request.At }, request, connection, transaction),
    });

    /// <summary>Takes back a formula that was put away.</summary>
    public Task<Changed> UndeleteAsync(string id, string etag, WriteRequest request) => ChangeAsync(id, etag, request, (head, connection, transaction) => head switch
    {
        null => new Changed(Outcome.NotThere, null),
        { Deleted: null } => new Changed(Outcome.Done, head),
        _ => Keep(head with { Deleted = null }, request, connection, transaction),
    });

    /// <summary>Lets everybody read a revision.</summary>
    /// <param name="id">Id of the formula.</param>
    /// <param name="number">Number of the revision; null for the newest.</param>
    /// <param name="etag">Tag of the state that is meant; empty where the caller does not mind.</param>
    /// <param name="request">The request.</param>
    public Task<Changed> PublishAsync(string id, long? number, string etag, WriteRequest request) => ChangeAsync(id, etag, request, (head, connection, transaction) => head switch
    {
        null => new Changed(Outcome.NotThere, null),
        { Deleted: not null } => new Changed(Outcome.PutAway, head),
        _ when number < 1 || number > head.Newest => new Changed(Outcome.NoSuchRevision, head),
        _ when head.Published == (number ?? head.Newest) => new Changed(Outcome.Done, head),
        _ => Keep(head with { Published = number ?? head.Newest }, request, connection, transaction),
    });

    /// <summary>Lets nobody outside the kitchen read it any more.</summary>
    public Task<Changed> UnpublishAsync(string id, string etag, WriteRequest request) => ChangeAsync(id, etag, request, (head, connection, transaction) => head switch
    {
        null => new Changed(Outcome.NotThere, null),
        { Published: null } => new Changed(Outcome.Done, head),
        _ => Keep(head with { Published = null }, request, connection, transaction),
    });

    /// <summary>The text that words are looked for in.</summary>
    internal static string SearchText(string name) => name.ToLowerInvariant();

    internal static void Insert(FormulaHead head, IDbConnection connection, IDbTransaction transaction) => connection.Execute(
        """
        INSERT INTO formulas (id, display_name, search_text, newest, published, edition, etag, created, updated, deleted)
        VALUES (@Id, @DisplayName, @SearchText, @Newest, @Published, @Edition, @Etag, @Created, @Updated, @Deleted)
        """,
        new { head.Id, head.DisplayName, SearchText = SearchText(head.DisplayName), head.Newest, head.Published, head.Edition, head.Etag, head.Created, head.Updated, head.Deleted },
        transaction);

    internal static void Insert(Revision revision, IDbConnection connection, IDbTransaction transaction) => connection.Execute(
        "INSERT INTO revisions (formula, number, document, note, goals, created) VALUES (@Formula, @Number, @Document, @Note, @Goals, @Created)", revision, transaction);

    internal static FormulaHead? Head(string id, IDbConnection connection, IDbTransaction transaction) =>
        connection.QuerySingleOrDefault<FormulaHead>($"SELECT {HeadColumns} FROM formulas WHERE id = @id", new { id }, transaction);

    private static Revision? FindRevision(string id, long number, IDbConnection connection, IDbTransaction transaction) => connection.QuerySingleOrDefault<Revision>(
        $"SELECT {RevisionColumns} FROM revisions WHERE formula = @id AND number = @number", new { id, number }, transaction);

    private Task<Changed> ChangeAsync(string id, string? etag, WriteRequest request, Func<FormulaHead?, IDbConnection, IDbTransaction, Changed> change) => database.WriteAsync((connection, transaction) =>
    {
        if (DoneRequests.Find(request, connection, transaction) is { } done)
        {
            return (false, done.Fingerprint == request.Fingerprint
                ? WithNewest(new Changed(Outcome.Done, Head(done.Name, connection, transaction)), connection, transaction)
                : new Changed(Outcome.OtherRequest, null));
        }

        var head = Head(id, connection, transaction);
        if (head is not null && !string.IsNullOrEmpty(etag) && etag != head.Etag)
        {
            return (false, new Changed(Outcome.Stale, head));
        }

        var changed = change(head, connection, transaction);
        if (changed.Outcome != Outcome.Done)
        {
            return (false, changed);
        }

        DoneRequests.Remember(request, id, connection, transaction);
        return (!request.IsOnlyTried, WithNewest(changed, connection, transaction));
    });

    private static Changed WithNewest(Changed changed, IDbConnection connection, IDbTransaction transaction) =>
        changed with { Newest = FindRevision(changed.Now!.Id, changed.Now.Newest, connection, transaction) };

    private static FormulaHead First(string id, FormulaDraft draft, WriteRequest request, IDbConnection connection, IDbTransaction transaction)
    {
        var head = Tagged(new FormulaHead(id, draft.DisplayName, 1, null, 1, string.Empty, request.At, request.At, null));
        Insert(head, connection, transaction);
        Insert(new Revision(id, 1, draft.Document, draft.Note, draft.Goals, request.At), connection, transaction);
        return head;
    }

    private static Changed Keep(FormulaHead head, WriteRequest request, IDbConnection connection, IDbTransaction transaction)
    {
        var now = Tagged(head with { Edition = head.Edition + 1, Updated = request.At });
        connection.Execute(
            """
            UPDATE formulas
            SET display_name = @DisplayName, search_text = @SearchText, newest = @Newest, published = @Published, edition = @Edition, etag = @Etag, updated = @Updated, deleted = @Deleted
            WHERE id = @Id
            """,
            new { now.Id, now.DisplayName, SearchText = SearchText(now.DisplayName), now.Newest, now.Published, now.Edition, now.Etag, now.Updated, now.Deleted },
            transaction);
        return new Changed(Outcome.Done, now);
    }

    /// <summary>The time stands in it too: of two lives of a formula, as after a backup was taken back, no states share a tag.</summary>
    private static FormulaHead Tagged(FormulaHead head) => head with
    {
        Etag = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{head.Id}\n{head.Edition}\n{head.Newest}\n{head.Published}\n{head.Updated}\n{head.Deleted}")))[..EtagLetters],
    };

    private static string Escaped(string word) =>
        word.Replace("!", "!!", StringComparison.Ordinal).Replace("%", "!%", StringComparison.Ordinal).Replace("_", "!_", StringComparison.Ordinal);
}
