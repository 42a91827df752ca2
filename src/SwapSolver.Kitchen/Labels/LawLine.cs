using SwapSolver.Kitchen.Panels;

namespace SwapSolver.Kitchen.Labels;

/// <summary>One line of a label as a law has it.</summary>
/// <param name="Nutrient">What it speaks of.</param>
/// <param name="Id">Its id in data and answers, as <c>saturatedFat</c>.</param>
/// <param name="Name">What the law calls it.</param>
/// <param name="Unit">Unit of its amounts.</param>
/// <param name="Depth">How far it is set in: 0, 1 below its whole, 2 below its part.</param>
/// <param name="IsRequired">Whether it stands on every label; a line that is not is left out where there is nothing to say.</param>
/// <param name="Rounding">How its amounts are printed.</param>
/// <param name="DailyValue">The day's amount; null where the law names none.</param>
public sealed record LawLine(
    Nutrient Nutrient, string Id, string Name, string Unit, int Depth, bool IsRequired, RoundingRule Rounding, DailyValue? DailyValue);
