using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Models;

/// <summary>Between which grams each line may lie: usage ranges, sensible minima and the room of its role.</summary>
internal sealed class Room(FormulaProblem problem)
{
    private readonly Grams batter = problem.Reference.BatterMass;

    private readonly Grams flours = problem.Reference.MassOf(Role.Flour) is { Value: > 0 } mass
        ? mass
        : problem.Reference.BatterMass * problem.Practice.FloursOfBatter.Share;

    /// <summary>Least and most grams of a line of the start.</summary>
    public (double Low, double High) OfKept(Line line)
    {
        var before = line.Grams.Value;
        var most = Math.Min(UsageMost(line.Ingredient), RoleMost(line.Ingredient.Role));
        if (problem.LinesKeepTheirRoom && line.Ingredient.Role is Role.Fat or Role.Liquid && RoleBand(line.Ingredient.Role) is { High: { } high })
        {
            most = Math.Min(most, high.Value * problem.Reference.MassOf(line.Ingredient).Value);
        }

        return problem.UsageBinds && before > UsageMost(line.Ingredient)
            ? (0, UsageMost(line.Ingredient))
            : (LeastAsked(line), Math.Max(most, before));
    }

    /// <summary>Least and most grams of a new line, where it is in the bowl at all.</summary>
    public (double Least, double Most) OfNew(Ingredient ingredient) =>
        (ingredient.Usage.SensibleMinimum.Value, Math.Min(UsageMost(ingredient), RoleMost(ingredient.Role)));

    /// <summary>A line that nobody asked to leave out stays in the bowl with its character: a cocoa cake keeps its cocoa.
    /// Only what leavens, and what wets, may be balanced away.</summary>
    private double Least(Line line) =>
        line.Ingredient.Role is Role.Acid or Role.Base or Role.LeaveningBlend or Role.Liquid
            ? 0
            : Math.Max(
                Math.Min(line.Ingredient.Usage.SensibleMinimum.Value, line.Grams.Value),
                line.Grams.Value * problem.Practice.LeastOfALine.Share);

    /// <summary>Whether a line is no ballast to hit a band with: salt, yeast and spice season the loaf, and sweetness is
    /// a matter of taste. They move only where a wish is about them.</summary>
    public bool StaysAsItIs(Line line) => Asked(line.Ingredient) is null && line.Ingredient.Role switch
    {
        Role.Salt => !problem.Holds.Any(hold => hold.FromCaller && hold.Balance.Settings.Target.FreedRoles.Contains(Role.Salt)),
        Role.Yeast => true,
        Role.Flavour => line.Grams < batter * problem.Practice.SeasoningOfBatter.Share,
        Role.Sweetener => !SweetnessIsAsked(line.Ingredient),
        _ => false,
    };

    /// <summary>The least of a line [g], where the caller may ask for less of it than a line keeps: then there is room below what was asked, since
    /// a scale weighs in steps.</summary>
    private double LeastAsked(Line line) =>
        Least(line) is var least && Asked(line.Ingredient) is { High: { } most } asked && most.Value < least + problem.Habits.StepOf(line.Ingredient).Value ? asked.Low?.Value ?? 0 : least;

    /// <summary>How much of an ingredient the caller wants [g]; null where nobody said it.</summary>
    private Band? Asked(Ingredient ingredient) =>
        problem.Holds.FirstOrDefault(hold => hold.FromCaller && hold.Balance is LineMass rule && rule.Ingredient.Equals(ingredient))?.Band;

    private bool SweetnessIsAsked(Ingredient sweetener) =>
        problem.Start.Lines.Any(other => other.Ingredient.Role == Role.Sweetener && problem.IsLeftOut(other.Ingredient))
        || problem.Holds.Any(hold => hold.FromCaller
            && hold.Balance.Settings.Target.NewRoles.Contains(Role.Sweetener)
            && hold.Balance.Numerator(sweetener.Typical).Value > 0);

    private double UsageMost(Ingredient ingredient) => ingredient.Usage.Most(flours, batter).Value;

    private double RoleMost(Role role) =>
        RoleBand(role) is { High: { } high } && problem.Reference.MassOf(role) is { Value: > 0 } mass
            ? high.Value * mass.Value
            : double.PositiveInfinity;

    private Band? RoleBand(Role role) =>
        problem.Holds.FirstOrDefault(hold => hold.Balance is RoleMass rule && rule.Role == role)?.Band;
}
