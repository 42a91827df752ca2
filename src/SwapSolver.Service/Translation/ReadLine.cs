using SwapSolver.Kitchen.Quantities;
using SwapSolver.V1;
using Domain = SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Service.Translation;

/// <summary>A line of a formula as it was read.</summary>
/// <param name="Line">The line in grams.</param>
/// <param name="Told">What its words or its measure were read as; null where it gave grams, or a count of a size.</param>
/// <param name="MayWeigh">What it may weigh [g]; null where it gave grams, or a count of a size.</param>
internal sealed record ReadLine(Domain.Line Line, ConvertedLine? Told = null, GramRange? MayWeigh = null);
