using SwapSolver.Solving.Questions;

namespace SwapSolver.Service.Translation;

/// <summary>Writes the pairs of a chart in the contract's words.</summary>
internal static class ChartWriter
{
    /// <summary>The pair.</summary>
    /// <param name="charted">What was found of it.</param>
    /// <param name="number">Its number, from 1.</param>
    /// <param name="pairs">How many pairs there are.</param>
    public static V1.ChartSwapsResponse Write(ChartedSwap charted, int number, int pairs)
    {
        var written = new V1.ChartSwapsResponse
        {
            Pair = number,
            Pairs = pairs,
            Ingredient = ResourceName.Of(charted.Pair.From),
            DisplayName = charted.Pair.From.Name,
            Verdict = VerdictWriter.Write(charted.Verdict),
            ChanceOfBalance = charted.Chance,
            Reason = charted.Reason,
        };
        if (charted.Pair.To is { } to)
        {
            written.Replacement = ResourceName.Of(to);
            written.ReplacementDisplayName = to.Name;
        }

        if (charted.Dose is { } dose)
        {
            written.DoseGrams = dose.Value;
        }

        written.Changes.AddRange(charted.Changes.Select(AnswerWriter.Write));
        written.Cautions.AddRange(charted.Cautions);
        return written;
    }
}
