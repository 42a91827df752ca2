using System.Collections.Immutable;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Answers;

/// <summary>What else changes where one leavening stands in for another.</summary>
/// <param name="Acid">Acid that went out and comes back [mmol].</param>
/// <param name="Base">Bicarbonate that went out and comes back [mmol].</param>
/// <param name="Doses">What comes in.</param>
/// <param name="WaterMore">Water that comes in beyond what went out [g]; below 0 where less comes in.</param>
/// <param name="WaterLeft">What of it no line could make up for: to be taken out by hand, or added where below 0 [g].</param>
/// <param name="SodiumMore">Sodium that comes in beyond what went out [g]; below 0 where less comes in.</param>
/// <param name="PotassiumMore">The same of potassium [g].</param>
/// <param name="SaltMore">Salt to add so that the sodium stays as it was [g]; below 0: to leave out.</param>
/// <param name="SaltIsTasted">Whether the sodium moves by so much that the loaf tastes of more or less salt.</param>
/// <param name="SweetnessMore">Sweetness that comes in beyond what went out, as sucrose [g].</param>
/// <param name="Timing">When the gas comes, beside when it came before.</param>
/// <param name="TimingWords">The same in words.</param>
/// <param name="WindowBefore">Working window before [min]; null where nothing gave gas.</param>
/// <param name="WindowAfter">Working window now [min]; null where nothing gives gas.</param>
/// <param name="CrumbBefore">pH of the crumb before; null where it cannot be told or there is no formula.</param>
/// <param name="CrumbAfter">pH of the crumb now; null as above.</param>
public sealed record ReplacedLeavening(
    Millimoles Acid,
    Millimoles Base,
    ImmutableArray<LeaveningDose> Doses,
    Grams WaterMore,
    Grams WaterLeft,
    Grams SodiumMore,
    Grams PotassiumMore,
    Grams SaltMore,
    bool SaltIsTasted,
    Grams SweetnessMore,
    GasTiming Timing,
    string TimingWords,
    Minutes? WindowBefore,
    Minutes? WindowAfter,
    Ph? CrumbBefore,
    Ph? CrumbAfter);
