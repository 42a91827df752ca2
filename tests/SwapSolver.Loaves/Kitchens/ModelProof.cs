using System.Globalization;
using SwapSolver.Loaves.IndependentSolvers;
using SwapSolver.Solving.Models;

namespace SwapSolver.Loaves.Kitchens;

/// <summary>One model as ours and as other programs solved it.</summary>
/// <param name="Ours">What ours says.</param>
/// <param name="Glpsol">What glpsol says; null where its time ran out, or where its choices were not whole.</param>
/// <param name="Cbc">What cbc says; null where it was not asked, or its time ran out.</param>
/// <param name="Gap">How far ours lies from what was said by others and stands in fractions, relative; endless where one has a
/// point and the other none.</param>
/// <param name="Judge">Who settled it.</param>
public sealed record ModelProof(Verdict Ours, Verdict? Glpsol, Verdict? Cbc, double Gap, Judge Judge)
{
    /// <summary>How far two proven optima may lie apart, relative to the larger or to 1: solvers hold rows to 1e-6 or 1e-7.</summary>
    public const double Tolerance = 1e-6;

    /// <summary>Has a model judged. Where glpsol proves nothing or says otherwise, cbc is asked too.</summary>
    /// <param name="model">The model.</param>
    /// <param name="solution">What ours found.</param>
    /// <param name="file">Where its text goes.</param>
    /// <param name="withCbc">Whether cbc judges in any case.</param>
    public static ModelProof Of(Model model, Solution solution, string file, bool withCbc)
    {
        var ours = solution.Outcome switch
        {
            Outcome.Optimal => new Verdict(true, solution.Objective) { Values = solution.Values },
            Outcome.Infeasible => Verdict.Infeasible,
            _ => throw new InvalidOperationException($"ours ended with {solution.Outcome}"),
        };
        var glpsol = InTime(() => IndependentSolvers.Glpsol.Judge(model, file));
        var agrees = glpsol is not null && ours.Apart(glpsol) <= Tolerance;
        var cbc = withCbc || !agrees ? InTime(() => CbcProgram.Judge(model, file)) : null;
        return new ModelProof(
            ours,
            glpsol,
            cbc,
            new[] { glpsol, cbc }.Max(other => other is null ? 0 : InFractions(model, ours, other, file)),
            agrees ? Judge.Glpsol : cbc is not null && ours.Apart(cbc) <= Tolerance ? Judge.Cbc : Judge.Nobody);
    }

    private static Verdict? InTime(Func<Verdict?> judge)
    {
        try
        {
            return judge();
        }
        catch (TimeoutException)
        {
            return null;
        }
    }

    /// <summary>How far ours lies from another's verdict. Where they differ, the better point of the two is looked at in
    /// fractions: its choices made whole either keep the rows and count what was said, or they do not.</summary>
    private static double InFractions(Model model, Verdict ours, Verdict other, string file)
    {
        var apart = ours.Apart(other);
        if (apart <= Tolerance)
        {
            return apart;
        }

        var oursIsBetter = ours.IsFeasible && !(other.Objective < ours.Objective);
        var better = IndependentSolvers.Glpsol.InFractions(model, (oursIsBetter ? ours : other).Values, $"{file}.fractions");
        return oursIsBetter ? ours.Apart(better)
            : better.IsFeasible && !(better.Objective >= ours.Objective) ? ours.Apart(better)
            : 0;
    }

    /// <inheritdoc/>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"ours {Ours.Objective:R}, glpsol {Glpsol?.Objective:R}, cbc {Cbc?.Objective:R}, apart {Gap:G3}, settled by {Judge}");
}
