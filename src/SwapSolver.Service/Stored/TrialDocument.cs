using System.Globalization;
using Google.Protobuf;
using SwapSolver.Records.Trials;
using SwapSolver.Service.Translation;
using SwapSolver.V1;

namespace SwapSolver.Service.Stored;

/// <summary>A trial as the records hold it, and as it comes out of them.</summary>
internal static class TrialDocument
{
    private static readonly JsonParser Parser = new(JsonParser.Settings.Default.WithIgnoreUnknownFields(true));

    /// <summary>The words of a trial, without what its place in the records says.</summary>
    public static string Write(Trial trial) => JsonFormatter.Default.Format(new Trial(trial) { Name = string.Empty, CreateTime = null });

    /// <summary>The trial as it was written down.</summary>
    public static Trial Read(StoredTrial stored)
    {
        var trial = Parser.Parse<Trial>(stored.Document);
        trial.Name = NameOf(stored);
        trial.CreateTime = Moment.Read(stored.Created);
        return trial;
    }

    /// <summary>Resource name of a trial.</summary>
    public static string NameOf(StoredTrial stored) => string.Create(CultureInfo.InvariantCulture, $"{ResourceName.OfFormula(stored.Formula)}/trials/{stored.Number}");

    /// <summary>What was really baked: the formula with the trial's own lines and oven.</summary>
    public static Formula BakedFormula(Trial trial, Formula formula)
    {
        var baked = new Formula(formula);
        if (trial.Lines.Count > 0)
        {
            baked.Lines.Clear();
            baked.Lines.AddRange(trial.Lines);
        }

        baked.Oven = trial.Oven ?? baked.Oven;
        return baked;
    }
}
