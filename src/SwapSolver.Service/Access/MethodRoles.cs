using System.Collections.Immutable;

namespace SwapSolver.Service.Access;

/// <summary>The least role that each method asks for. DEVELOPERS.md shows the same table, and a test holds the two together.</summary>
internal static class MethodRoles
{
    private static readonly ImmutableDictionary<string, Role> Least = new Dictionary<Role, string[]>
    {
        [Role.Anonymous] =
        [
            "BalanceFormula", "CheckSwap", "VaryFormula", "ReplaceIngredient", "ChartSwaps", "ResizeFormula", "ReformulateFormula", "TraceFrontier",
            "BakeFormula", "PredictRise", "PrintCard", "PrintSwapTable", "ConvertLines", "AnswerQuestion", "AnswerQuestions", "GetIngredient", "ListIngredients", "GetFormula", "ListFormulas", "ListRevisions", "DiffRevisions",
        ],
        [Role.Reader] = ["GetTrial", "ListTrials", "ListLearnedFacts", "SuggestTrials", "GetJob", "ListJobs", "WatchJob", "ListJobItems"],
        [Role.Editor] =
        [
            "CreateFormula", "UpdateFormula", "DeleteFormula", "UndeleteFormula", "CopyFormula", "PublishFormula", "UnpublishFormula",
            "MeasureIngredient", "AddIngredient", "ImportIngredients", "DeleteIngredient", "AddTrial", "ChooseLearnedFact",
            "CreateCatalogueJob", "PauseJob", "ResumeJob", "CancelJob",
        ],
        [Role.Owner] = ["CreateKey", "ListKeys", "RevokeKey", "ExportRecords", "ImportRecords", "BackupRecords", "RestoreRecords"],
    }.SelectMany(pair => pair.Value.Select(method => KeyValuePair.Create(method, pair.Key))).ToImmutableDictionary(StringComparer.Ordinal);

    /// <summary>The least role for a method; one that nobody thought of is for the owner alone.</summary>
    /// <param name="method">Its name.</param>
    public static Role Of(string method) => Least.GetValueOrDefault(method, Role.Owner);
}
