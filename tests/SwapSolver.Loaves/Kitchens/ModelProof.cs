using System.Globalization;
using SwapSolver.Loaves.IndependentSolvers;
using SwapSolver.Solving.Models;

namespace SwapSolver.Loaves.Kitchens;

/// <summary>One model as ours and as other programs solved it.</summary>
/// <param name="Ours">What ours says.</param>
/// <param name="Glpsol">What glpsol says; null where its time ran out before it had proven anything.</param>
/// <param name="Cbc">What cbc says; null where it was not asked.</param>
public sealed record ModelProof(Verdict Ours, Verdict? Glpsol, Verdict? Cbc)
{
    /// <summary>Has a model judged. Where glpsol proves nothing in its time, cbc is asked in its place.</summary>
    /// <param name="model">The model.</param>
    /// <param name="solution">What ours found.</param>
    /// <param name="file">Where its text goes.</param>
    /// <param name="withCbc">Whether cbc judges too.</param>
    public static ModelProof Of(Model model, Solution solution, string file, bool withCbc)
    {
        var ours = solution.Outcome switch
        {
            Outcome.Optimal => new Verdict(true, solution.Objective),
            Outcome.Infeasible => Verdict.Infeasible,
            _ => throw new InvalidOperationException($"ours ended with {solution.Outcome}"),
        };
        Verdict? glpsol = null;
        try
        {
            glpsol = IndependentSolvers.Glpsol.Judge(model, file);
        }
        catch (TimeoutException)
        {
            withCbc = true;
        }

        return new ModelProof(ours, glpsol, withCbc ? CbcProgram.Judge(file) : null);
    }

    /// <summary>Widest relative distance between ours and theirs; endless where one found a point and the other none.</summary>
    public double Gap => Math.Max(Apart(Glpsol), Apart(Cbc));

    private double Apart(Verdict? other) =>
        other is null ? 0
        : Ours.IsFeasible != other.IsFeasible ? double.PositiveInfinity
        : !Ours.IsFeasible ? 0
        : Math.Abs(Ours.Objective - other.Objective) / Math.Max(1, Math.Abs(other.Objective));

    /// <inheritdoc/>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"ours {Ours.Objective:R}, glpsol {Glpsol?.Objective:R}, cbc {Cbc?.Objective:R}, apart {Gap:G3}");
}
