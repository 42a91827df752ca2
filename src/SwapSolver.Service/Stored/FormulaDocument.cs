using Google.Protobuf;
using SwapSolver.Records.Formulas;
using SwapSolver.Service.Translation;

namespace SwapSolver.Service.Stored;

/// <summary>A formula as the records hold it, and as it comes out of them.</summary>
internal static class FormulaDocument
{
    private static readonly JsonParser Parser = new(JsonParser.Settings.Default.WithIgnoreUnknownFields(true));

    /// <summary>The words of a formula: everything that the baker said, and nothing that the service wrote to it.</summary>
    public static string Write(V1.Formula formula)
    {
        var bare = Bare(formula);
        foreach (var line in bare.Lines)
        {
            line.DisplayName = string.Empty;
        }

        return JsonFormatter.Default.Format(bare);
    }

    /// <summary>The formula of these words.</summary>
    public static V1.Formula Read(string document) => Parser.Parse<V1.Formula>(document);

    /// <summary>A formula without what the service writes to it.</summary>
    public static V1.Formula Bare(V1.Formula formula)
    {
        var bare = new V1.Formula(formula) { Name = string.Empty, CreateTime = null, UpdateTime = null, DeleteTime = null };
        bare.ClearEtag();
        bare.ClearRevision();
        bare.ClearPublishedRevision();
        return bare;
    }

    /// <summary>A revision as everybody sees it.</summary>
    public static V1.Formula Write(FormulaHead head, Revision revision) => Stamped(Read(revision.Document), head, revision.Number, ResourceName.OfFormula(head.Id));

    /// <summary>A formula without its lines, as a list shows it.</summary>
    public static V1.Formula WriteShort(FormulaHead head) =>
        Stamped(new V1.Formula { DisplayName = head.DisplayName }, head, head.Newest, ResourceName.OfFormula(head.Id));

    /// <summary>The published revision as those outside the kitchen see it: nothing tells what else there is.</summary>
    public static V1.Formula WritePublished(FormulaHead head, Revision revision)
    {
        var formula = Stamped(Read(revision.Document), head with { Created = revision.Created, Updated = revision.Created }, revision.Number, ResourceName.OfFormula(head.Id));
        formula.ClearEtag();
        return formula;
    }

    /// <summary>The same without its lines, as a list shows it.</summary>
    public static V1.Formula WritePublishedShort(FormulaHead head, Revision revision)
    {
        var formula = WritePublished(head, revision);
        formula.Lines.Clear();
        return formula;
    }

    private static V1.Formula Stamped(V1.Formula formula, FormulaHead head, long number, string name)
    {
        formula.Name = name;
        formula.Etag = head.Etag;
        formula.Revision = (int)number;
        formula.CreateTime = Moment.Read(head.Created);
        formula.UpdateTime = Moment.Read(head.Updated);
        formula.DeleteTime = Moment.Read(head.Deleted);
        if (head.Published is { } published)
        {
            formula.PublishedRevision = (int)published;
        }

        return formula;
    }
}
