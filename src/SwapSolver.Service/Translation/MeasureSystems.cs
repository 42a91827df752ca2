using System.Collections.Frozen;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Service.Faults;
using SwapSolver.V1;

namespace SwapSolver.Service.Translation;

/// <summary>Systems of measures, from the contract.</summary>
internal static class MeasureSystems
{
    private static readonly FrozenDictionary<ConvertLinesRequest.Types.System, MeasureSystem> Known =
        new Dictionary<ConvertLinesRequest.Types.System, MeasureSystem>
        {
            [ConvertLinesRequest.Types.System.UsCustomary] = MeasureSystem.UsCustomary,
            [ConvertLinesRequest.Types.System.UsLabelling] = MeasureSystem.UsLabelling,
            [ConvertLinesRequest.Types.System.Metric] = MeasureSystem.Metric,
            [ConvertLinesRequest.Types.System.Australian] = MeasureSystem.Australian,
            [ConvertLinesRequest.Types.System.UkImperial] = MeasureSystem.UkImperial,
        }.ToFrozenDictionary();

    /// <summary>The system, or null where none is said.</summary>
    public static MeasureSystem? Read(ConvertLinesRequest.Types.System system, ProblemList problems)
    {
        if (Known.TryGetValue(system, out var known))
        {
            return known;
        }

        if (system != ConvertLinesRequest.Types.System.Unspecified)
        {
            problems.Add("system", system.ToString(), "is no system of measures", "give US_CUSTOMARY, US_LABELLING, METRIC, AUSTRALIAN or UK_IMPERIAL");
        }

        return null;
    }
}
