using SwapSolver.Kitchen.Formulas;
using SwapSolver.Service.Translation;
using SwapSolver.Solving;

namespace SwapSolver.Service.Desk;

/// <summary>Turns targets into limits, for the questions that take limits beside what they ask: a word of bakers is a share of the
/// formula's own readings.</summary>
/// <param name="bakehouse">The rules and the words.</param>
internal sealed class TargetLimits(Bakehouse bakehouse)
{
    private const int Digits = 6;

    /// <summary>The limits of targets.</summary>
    /// <param name="targets">The targets.</param>
    /// <param name="formula">The formula whose own readings count.</param>
    public IEnumerable<V1.ReadingLimit> Of(IEnumerable<V1.Target> targets, Formula formula) => targets.SelectMany(target => Of(target, formula));

    private IEnumerable<V1.ReadingLimit> Of(V1.Target target, Formula formula)
    {
        if (bakehouse.Goals.Find(target.Name) is not { } goal)
        {
            return [Limit(target.Name, target.HasLow ? target.Low : null, target.HasHigh ? target.High : null)];
        }

        return goal.Aims
            .Select(aim => (aim, Own: GoalReader.ReadingOf(aim.Balance, formula, formula)))
            .Where(pair => pair.Own is not null)
            .Select(pair => Limit(pair.aim.Balance.Id, pair.Own * pair.aim.Share.Low?.Share, pair.Own * pair.aim.Share.High?.Share));
    }

    private static V1.ReadingLimit Limit(string balance, double? low, double? high)
    {
        var limit = new V1.ReadingLimit { Balance = balance };
        if (low is { } least)
        {
            limit.Low = Math.Round(least, Digits);
        }

        if (high is { } most)
        {
            limit.High = Math.Round(most, Digits);
        }

        return limit;
    }
}
