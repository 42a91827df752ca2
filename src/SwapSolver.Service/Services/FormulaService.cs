using System.Globalization;
using Google.Protobuf.WellKnownTypes;
using Grpc.Core;
using SwapSolver.Records.Formulas;
using SwapSolver.Service.Access;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Records;
using SwapSolver.Service.Stored;
using SwapSolver.Service.Translation;
using SwapSolver.V1;

namespace SwapSolver.Service.Services;

/// <summary>Keeps the kitchen's formulas and all their revisions.</summary>
internal sealed class FormulaService(FormulaLibrary library, KitchenToday kitchen, RequestReader requests, Caller caller) : V1.FormulaService.FormulaServiceBase
{
    private const string UsualCopyNote = "copied from";

    /// <inheritdoc/>
    public override Task<Formula> CreateFormula(CreateFormulaRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        var reader = new DraftReader(kitchen.Pantry, kitchen.Lines, problems);
        var draft = reader.Read(request.Formula, request.Note, request.Goals);
        var id = reader.NewId(request.FormulaId, draft.DisplayName);
        var asked = requests.Read(request.RequestId, request, problems, request.ValidateOnly);
        problems.ThrowIfAny();
        return CreateAsync(id, draft, asked);
    }

    /// <inheritdoc/>
    public override Task<Formula> GetFormula(GetFormulaRequest request, ServerCallContext context) => Task.FromResult(library.Find(Required(request.Name)).Formula);

    /// <inheritdoc/>
    public override Task<ListFormulasResponse> ListFormulas(ListFormulasRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        var pages = new PageReader($"{request.ShowDeleted}:{request.Filter}", problems);
        var (size, last) = (pages.Size(request.PageSize), pages.Last(request.PageToken));
        var filter = FormulaFilterReader.Read(request.Filter, request.ShowDeleted, problems);
        problems.ThrowIfAny();
        var listed = library.List(last, size + 1, filter);
        var response = new ListFormulasResponse { NextPageToken = listed.Count > size ? pages.Token(ResourceName.FormulaId(listed[size - 1].Name)) : string.Empty };
        response.Formulas.AddRange(listed.Take(size));
        return Task.FromResult(response);
    }

    /// <inheritdoc/>
    public override Task<Formula> UpdateFormula(UpdateFormulaRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        var formula = request.Formula is null ? null : Masked(request.Formula, request.UpdateMask, problems);
        var reader = new DraftReader(kitchen.Pantry, kitchen.Lines, problems);
        var draft = reader.Read(formula, request.Note, request.Goals);
        var asked = requests.Read(request.RequestId, request, problems, request.ValidateOnly);
        var name = formula?.Name ?? string.Empty;
        if (formula is not null && name.Length == 0 && !request.AllowMissing)
        {
            problems.Add("formula.name", string.Empty, "the name is missing", "say which formula is meant, as formulas/hazelnut-tin-loaf");
        }

        var id = name.Length > 0 && library.IsThere(name) ? ResourceName.FormulaId(name) : reader.NewId(name, draft.DisplayName);
        problems.ThrowIfAny();
        name = ResourceName.OfFormula(id);
        if (library.Shipped.Find(name) is not null)
        {
            throw FormulaRefusal.Shipped(name);
        }

        return DoneAsync(library.Saved.UpdateAsync(id, draft, formula!.Etag, request.AllowMissing, asked), name);
    }

    /// <inheritdoc/>
    public override Task<Formula> DeleteFormula(DeleteFormulaRequest request, ServerCallContext context) =>
        Change(request.Name, request.RequestId, request.ValidateOnly, request, (id, asked) => library.Saved.DeleteAsync(id, request.Etag, asked));

    /// <inheritdoc/>
    public override Task<Formula> UndeleteFormula(UndeleteFormulaRequest request, ServerCallContext context) =>
        Change(request.Name, request.RequestId, request.ValidateOnly, request, (id, asked) => library.Saved.UndeleteAsync(id, request.Etag, asked));

    /// <inheritdoc/>
    public override Task<Formula> PublishFormula(PublishFormulaRequest request, ServerCallContext context) =>
        Change(request.Name, request.RequestId, request.ValidateOnly, request, (id, asked) => library.Saved.PublishAsync(id, request.Revision == 0 ? null : request.Revision, request.Etag, asked));

    /// <inheritdoc/>
    public override Task<Formula> UnpublishFormula(UnpublishFormulaRequest request, ServerCallContext context) =>
        Change(request.Name, request.RequestId, request.ValidateOnly, request, (id, asked) => library.Saved.UnpublishAsync(id, request.Etag, asked));

    /// <inheritdoc/>
    public override Task<Formula> CopyFormula(CopyFormulaRequest request, ServerCallContext context)
    {
        var found = library.Find(Required(request.Name));
        var copy = FormulaDocument.Bare(found.Formula);
        copy.DisplayName = request.DisplayName.Length > 0 ? request.DisplayName : copy.DisplayName;
        var problems = new ProblemList();
        var reader = new DraftReader(kitchen.Pantry, kitchen.Lines, problems);
        var from = found.Revision is { } revision ? ResourceName.OfRevision(revision.Formula, revision.Number) : request.Name;
        var draft = reader.Read(copy, $"{UsualCopyNote} {from}", []);
        var id = reader.NewId(request.FormulaId, draft.DisplayName);
        var asked = requests.Read(request.RequestId, request, problems, request.ValidateOnly);
        problems.ThrowIfAny();
        return CreateAsync(id, draft, asked);
    }

    /// <inheritdoc/>
    public override Task<ListRevisionsResponse> ListRevisions(ListRevisionsRequest request, ServerCallContext context)
    {
        var name = Required(request.Name);
        var problems = new ProblemList();
        var pages = new PageReader(name, problems);
        var (size, last) = (pages.Size(request.PageSize), pages.Last(request.PageToken));
        if (last.Length > 0 && !long.TryParse(last, NumberStyles.None, CultureInfo.InvariantCulture, out _))
        {
            problems.Add("pageToken", request.PageToken, "is no token of this list", "give the nextPageToken of the page before");
        }

        problems.ThrowIfAny();
        var found = library.Find(name);
        var response = new ListRevisionsResponse();
        if (caller.SeesOnlyPublished && found.Revision is { } published)
        {
            response.Revisions.Add(new FormulaRevision { Name = ResourceName.OfRevision(published.Formula, published.Number), Formula = FormulaDocument.Read(published.Document), CreateTime = Moment.Read(published.Created) });
        }
        else if (found.Head is { } head)
        {
            var listed = library.Saved.ListRevisions(head.Id, last.Length == 0 ? null : long.Parse(last, CultureInfo.InvariantCulture), size + 1);
            response.Revisions.AddRange(listed.Take(size).Select(Write));
            response.NextPageToken = listed.Count > size ? pages.Token(listed[size - 1].Number.ToString(CultureInfo.InvariantCulture)) : string.Empty;
        }

        return Task.FromResult(response);
    }

    /// <inheritdoc/>
    public override Task<DiffRevisionsResponse> DiffRevisions(DiffRevisionsRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        if (request.To.Length == 0)
        {
            problems.Add("to", string.Empty, "the second revision is missing", "give a name, as formulas/my-loaf or formulas/my-loaf/revisions/2");
        }

        problems.ThrowIfAny();
        var second = library.Find(request.To);
        var first = library.Find(request.From.Length > 0 ? request.From : Before(second, request.To));
        var reader = new FormulaReader(kitchen.Pantry, kitchen.Lines, problems);
        var (before, after) = (reader.Read(first.Formula, "from").Formula, reader.Read(second.Formula, "to").Formula);
        problems.ThrowIfAny();
        var goals = caller.SeesOnlyPublished || second.Revision is null ? [] : Goals.Read(second.Revision.Goals);
        return Task.FromResult(new DifferenceWriter(kitchen.Search.Bakehouse).Write(before.Merged(), after.Merged(), goals));
    }

    private static string Before(StoredFormula second, string name) => second.Revision is { Number: > 1 } revision
        ? ResourceName.OfRevision(revision.Formula, revision.Number - 1)
        : throw NothingBefore(name);

    private static RpcException NothingBefore(string name)
    {
        var problems = new ProblemList();
        problems.Add("from", string.Empty, $"'{name}' has no revision before it", "name the first too, as formulas/hazelnut-tin-loaf");
        return problems.Refusal();
    }

    private static FormulaRevision Write(Revision revision)
    {
        var written = new FormulaRevision
        {
            Name = ResourceName.OfRevision(revision.Formula, revision.Number),
            Formula = FormulaDocument.Read(revision.Document),
            Note = revision.Note,
            CreateTime = Moment.Read(revision.Created),
        };
        written.Goals.AddRange(Goals.Read(revision.Goals));
        return written;
    }

    private static string Required(string name)
    {
        var problems = new ProblemList();
        if (string.IsNullOrEmpty(name))
        {
            problems.Add("name", string.Empty, "the name is missing", "give a name, as formulas/hazelnut-tin-loaf");
        }

        problems.ThrowIfAny();
        return name;
    }

    /// <summary>The formula as it is with only the named fields new.</summary>
    private Formula Masked(Formula formula, FieldMask? mask, ProblemList problems)
    {
        if (mask is null || mask.Paths.Count == 0 || mask.Paths.Contains("*"))
        {
            return formula;
        }

        if (mask.Paths.FirstOrDefault(path => !FieldMask.IsValid<Formula>(path)) is { } wrong)
        {
            problems.Add("updateMask", wrong, "is no field of a formula", "name fields as lines, displayName or slices, or leave the mask away");
            return formula;
        }

        // Merged into what is newest: with an etag, that is what the caller saw.
        var merged = new Formula(library.Find(formula.Name).Formula) { Etag = formula.Etag };
        mask.Merge(formula, merged, new FieldMask.MergeOptions { ReplaceMessageFields = true, ReplaceRepeatedFields = true, ReplacePrimitiveFields = true });
        merged.Name = formula.Name;
        return merged;
    }

    private Task<Formula> CreateAsync(string id, FormulaDraft draft, WriteRequest asked)
    {
        var name = ResourceName.OfFormula(id);
        return library.Shipped.Find(name) is null
            ? DoneAsync(library.Saved.CreateAsync(id, draft, asked), name)
            : throw FormulaRefusal.Taken(id, "it is shipped with the program: give another id");
    }

    private Task<Formula> Change(string name, string requestId, bool isOnlyTried, Google.Protobuf.IMessage request, Func<string, WriteRequest, Task<Changed>> change)
    {
        var id = ResourceName.FormulaId(Required(name));
        var problems = new ProblemList();
        var asked = requests.Read(requestId, request, problems, isOnlyTried);
        problems.ThrowIfAny();
        name = ResourceName.OfFormula(id);
        return library.Shipped.Find(name) is null ? DoneAsync(change(id, asked), name) : throw FormulaRefusal.Shipped(name);
    }

    /// <summary>The formula as this very change left it, whatever others did since.</summary>
    private async Task<Formula> DoneAsync(Task<Changed> change, string name)
    {
        var changed = await change;
        if (FormulaRefusal.Of(changed, name, library) is { } refusal)
        {
            throw refusal;
        }

        return FormulaDocument.Write(changed.Now!, changed.Newest!);
    }
}
