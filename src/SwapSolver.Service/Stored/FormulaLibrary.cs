using SwapSolver.Records;
using SwapSolver.Records.Formulas;
using SwapSolver.Service.Access;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Translation;

namespace SwapSolver.Service.Stored;

/// <summary>Every formula that can be asked for by name: what this kitchen saved, and what is shipped. A caller without a key
/// sees of the kitchen's own what is published, in the revision that is, and nothing of what came before or after.</summary>
internal sealed class FormulaLibrary(StoredFormulas shipped, KitchenRecords records, Caller caller)
{
    /// <summary>How many of the kitchen's own names are looked at where one is mistyped.</summary>
    private const int MostNames = 200;

    private const int FirstLetters = 3;

    /// <summary>The shipped formulas.</summary>
    public StoredFormulas Shipped => shipped;

    /// <summary>What this kitchen saved.</summary>
    public FormulaRecords Saved => records.Formulas;

    /// <summary>A formula by its name, or by the name of one of its revisions.</summary>
    /// <param name="name">The name.</param>
    /// <exception cref="Grpc.Core.RpcException">NOT_FOUND.</exception>
    public StoredFormula Find(string name)
    {
        var (id, number) = ResourceName.FormulaParts(name);
        if (number is null && shipped.Find(ResourceName.OfFormula(id)) is { } found)
        {
            return new StoredFormula(new V1.Formula(found) { Name = ResourceName.OfFormula(id) }, null, null);
        }

        if (caller.SeesOnlyPublished)
        {
            return FindPublished(id, number) ?? throw NotThere(name);
        }

        return Saved.Find(id, number) is var (head, revision)
            ? new StoredFormula(FormulaDocument.Write(head, revision), head, revision)
            : throw NotThere(name);
    }

    /// <summary>Whether a formula has this name.</summary>
    public bool IsThere(string name) => ResourceName.FormulaId(name) is var id && (shipped.Find(ResourceName.OfFormula(id)) is not null || Saved.Find(id) is not null);

    /// <summary>A page of formulas, by id, without their lines. What is shipped is published.</summary>
    /// <param name="after">The id that the page before ended with; empty for the first page.</param>
    /// <param name="most">Most formulas on it.</param>
    /// <param name="filter">Which are meant.</param>
    public IReadOnlyList<V1.Formula> List(string after, int most, FormulaFilter filter)
    {
        var own = caller.SeesOnlyPublished
            ? Saved.List(after, most, FormulaFilter.InUse with { IsPublished = true }).Select(head => FormulaDocument.WritePublishedShort(head, Saved.Find(head.Id, head.Published)!.Value.Revision))
                .Where(formula => filter.IsPublished != false && filter.Words.All(word => formula.DisplayName.Contains(word, StringComparison.OrdinalIgnoreCase)))
            : Saved.List(after, most, filter).Select(FormulaDocument.WriteShort);
        var theirs = filter.IsPublished == false ? [] : shipped.Names
            .Where(name => string.CompareOrdinal(ResourceName.FormulaId(name), after) > 0)
            .Select(name => new V1.Formula { Name = name, DisplayName = shipped.Find(name)!.DisplayName })
            .Where(formula => filter.Words.All(word => formula.DisplayName.Contains(word, StringComparison.OrdinalIgnoreCase)));
        return [.. own.Concat(theirs).OrderBy(formula => ResourceName.FormulaId(formula.Name), StringComparer.Ordinal).Take(most)];
    }

    /// <summary>NOT_FOUND with the nearest names.</summary>
    public Grpc.Core.RpcException NotThere(string name)
    {
        var id = ResourceName.FormulaParts(name).Id;
        var own = caller.SeesOnlyPublished ? [] : Saved.IdsFrom(id.Length > FirstLetters ? id[..FirstLetters] : string.Empty, MostNames).Select(ResourceName.OfFormula);
        return ProblemList.NotFound(name, NearestNames.To(name, shipped.Names.Concat(own)));
    }

    private StoredFormula? FindPublished(string id, int? number) =>
        Saved.Find(id) is { Published: { } published, Deleted: null } head && (number ?? published) == published && Saved.Find(id, published) is var (_, revision)
            ? new StoredFormula(FormulaDocument.WritePublished(head, revision), head, revision)
            : null;
}
