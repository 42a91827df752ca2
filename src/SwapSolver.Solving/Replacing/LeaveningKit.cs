using System.Collections.Immutable;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Solving.Replacing;

/// <summary>One way to stand in for an acid, a base or a powder.</summary>
/// <param name="Doses">What comes in.</param>
/// <param name="AcidTooMuch">Acid that comes in beyond what went out, as of a powder in place of soda: so much other acid goes [mmol].</param>
/// <param name="BaseTooMuch">Base that comes in beyond what went out, as of a powder in place of an acid: so much other base goes [mmol].</param>
internal sealed record LeaveningKit(ImmutableArray<LeaveningDose> Doses, Millimoles AcidTooMuch, Millimoles BaseTooMuch);
