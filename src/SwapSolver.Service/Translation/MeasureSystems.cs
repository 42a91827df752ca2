using System.Collections.Frozen;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Service.Faults;
using SwapSolver.V1;

namespace SwapSolver.Service.Translation;

/// <summary>Systems of measures, from the contract.</summary>
internal static class MeasureSystems
{
    private static readonly FrozenDictionary<Line.Types.System, MeasureSystem> Known =
        new Dictionary<Line.Types.System, MeasureSystem>
        {
            [Line.Types.System.UsCustomary] = MeasureSystem.UsCustomary,
            [Line.Types.System.UsLabelling] = MeasureSystem.UsLabelling,
            [Line.Types.System.Metric] = MeasureSystem.Metric,
            [Line.Types.System.Australian] = MeasureSystem.Australian,
            [Line.Types.System.UkImperial] = MeasureSystem.UkImperial,
        }.ToFrozenDictionary();

    /// <summary>The system, or null where none is said.</summary>
    /// <param name="system">The system of the contract.</param>
    /// <param name="path">Its field.</param>
    /// <param name="problems">What is wrong with it.</param>
    public static MeasureSystem? Read(Line.Types.System system, string path, ProblemList problems)
    {
        if (Known.TryGetValue(system, out var known))
        {
            return known;
        }

        if (system != Line.Types.System.Unspecified)
        {
            problems.Add(path, system.ToString(), "is no system of measures", "give US_CUSTOMARY, US_LABELLING, METRIC, AUSTRALIAN or UK_IMPERIAL");
        }

        return null;
    }
}
