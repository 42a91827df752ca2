using SwapSolver.Solving.Answers;

namespace SwapSolver.Service.Translation;

/// <summary>Writes what comes of one leavening in another's place.</summary>
internal static class ReplacementWriter
{
    /// <summary>The replacement.</summary>
    public static V1.LeaveningReplacement Write(ReplacedLeavening replaced)
    {
        var written = new V1.LeaveningReplacement
        {
            AcidMmol = replaced.Acid.Value,
            BaseMmol = replaced.Base.Value,
            WaterMoreGrams = replaced.WaterMore.Value,
            WaterLeftGrams = replaced.WaterLeft.Value,
            SodiumMoreMg = 1000 * replaced.SodiumMore.Value,
            SaltToEvenGrams = replaced.SaltMore.Value,
            PotassiumMoreMg = 1000 * replaced.PotassiumMore.Value,
            SweetnessMoreGrams = replaced.SweetnessMore.Value,
            Timing = replaced.Timing switch
            {
                GasTiming.Faster => V1.LeaveningReplacement.Types.Timing.Faster,
                GasTiming.Slower => V1.LeaveningReplacement.Types.Timing.Slower,
                GasTiming.OvenOnly => V1.LeaveningReplacement.Types.Timing.OvenOnly,
                _ => V1.LeaveningReplacement.Types.Timing.AsFast,
            },
            TimingWords = replaced.TimingWords,
        };
        written.Doses.AddRange(replaced.Doses.Select(dose => new V1.LeaveningDose
        {
            Ingredient = ResourceName.Of(dose.Ingredient),
            Grams = dose.Weighed.Value,
            ExactGrams = dose.Exact.Value,
            Mmol = dose.Equivalents.Value,
            DisplayName = dose.Ingredient.Name,
        }));
        SetWhatIsKnown(written, replaced);
        return written;
    }

    private static void SetWhatIsKnown(V1.LeaveningReplacement written, ReplacedLeavening replaced)
    {
        if (replaced.WindowBefore is { } before)
        {
            written.WorkingWindowBeforeMinutes = before.Value;
        }

        if (replaced.WindowAfter is { } after)
        {
            written.WorkingWindowMinutes = after.Value;
        }

        if (replaced.CrumbBefore is { } was)
        {
            written.PhCrumbBefore = was.Value;
        }

        if (replaced.CrumbAfter is { } now)
        {
            written.PhCrumb = now.Value;
        }
    }
}
