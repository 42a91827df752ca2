using System.Globalization;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving;
using Domain = SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Service.Translation;

/// <summary>What is said of a tin for a formula that has none of its own: nothing says how full that is to be, so it is filled as tins are.</summary>
internal static class TinWords
{
    /// <summary>The sentence; none where no tin is asked for, or the formula has one.</summary>
    public static IEnumerable<string> Of(Bakehouse bakehouse, Domain.Formula formula, V1.Tin? tin) =>
        tin is null || formula.Shape is Domain.Tin ? []
        : [
            bakehouse.Phrases.Say(
                "note-tin-well-filled",
                ("grams", Rounded(bakehouse.Bake.WellFilling(new Domain.Tin(new Millimetres(tin.LengthMm), new Millimetres(tin.WidthMm), new Millimetres(tin.HeightMm))).Value)),
                ("value", Rounded(bakehouse.Bake.Practice.FullPercent.Range.Typical))),
        ];

    private static string Rounded(double value) => Math.Round(value).ToString(CultureInfo.InvariantCulture);
}
