using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Questions;

/// <summary>A formula in another size, in whole eggs, within limits.</summary>
/// <param name="Formula">The formula.</param>
/// <param name="Size">The size that it is wanted in.</param>
/// <param name="Wishes">Limits on readings.</param>
/// <param name="Habits">How the kitchen wants its answers.</param>
public sealed record Resize(Formula Formula, NewSize Size, ImmutableArray<Hold> Wishes, Habits Habits)
{
    /// <summary>What was taken for granted of the size.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>Answers the question.</summary>
    /// <param name="search">The solving.</param>
    /// <param name="clock">Time left.</param>
    /// <param name="cancel">Stops the search.</param>
    public Outcomes Answer(AnswerSearch search, Deadline clock, CancellationToken cancel)
    {
        var slices = Size.Slices.ToString(System.Globalization.CultureInfo.InvariantCulture);
        ImmutableArray<string> notes = [search.Bakehouse.Phrases.Say("note-slices", ("slices", slices)), .. Notes];
        if (!Wishes.IsEmpty)
        {
            var limited = Problem(search.Bakehouse, [Role.Flour, Role.Egg, Role.Liquid, Role.Gel, .. Variant.SweetenerOf(Formula)]);
            return search.Find(Formula, [new Way(limited, 0, notes)], clock, cancel);
        }

        // A larger loaf is the same loaf wherever it can be; a white or a yolk more may make up for eggs that come whole.
        var same = Problem(search.Bakehouse);
        var withEgg = Problem(search.Bakehouse, Role.Egg, Role.Liquid);
        return search.Find(Formula, [new Way(same, 0, notes), new Way(withEgg, Weights.NewJar, notes)], clock, cancel);
    }

    /// <summary>The problem that this question is.</summary>
    /// <param name="bakehouse">Everything that is known.</param>
    /// <param name="newRoles">Roles in which new ingredients may come in.</param>
    public FormulaProblem Problem(Bakehouse bakehouse, params ReadOnlySpan<Role> newRoles)
    {
        var merged = Formula.InOrderOfIds();
        var reference = merged.Scaled(Size.Factor) with { Slices = Size.Slices, Shape = Size.Shape };
        var balances = bakehouse.Balances;
        var tolerance = bakehouse.Practice.SizeTolerance.Share;
        var size = new Hold(
            balances.BatterMass.Id,
            balances.BatterMass,
            new Kitchen.Balances.Band(new Level(1 - tolerance), new Level(1 + tolerance)),
            FromCaller: true);
        ImmutableArray<Hold> holds =
        [
            .. HoldList.Around(balances, reference, Wishes).Where(hold => hold.FromCaller || hold.Balance != balances.BatterMass),
            size,
        ];
        return new FormulaProblem(
            reference,
            OnScale(reference),
            holds,
            [.. balances.Anchored, balances.BatterMass],
            balances.NetCarbohydrate,
            newRoles.IsEmpty
                ? []
                : new Candidates(bakehouse) { Named = Habits.Named }.For(reference, holds, newRoles),
            Habits,
            bakehouse.Practice)
        {
            ScaledFrom = merged,
        };
    }

    /// <summary>The scaled formula in steps of the scale and in whole eggs: what changes are counted from.</summary>
    private Formula OnScale(Formula scaled) => scaled with
    {
        Lines =
        [
            .. scaled.Lines.Select(line =>
            {
                var size = Habits.WeighedEgg || line.Ingredient.CountedUnits.IsEmpty ? (EggSize?)null : line.Size ?? Habits.EggSize;
                var step = size is { } counted && Line.UnitOf(line.Ingredient, counted) is { } unit
                    ? unit
                    : Habits.StepOf(line.Ingredient);
                return line with { Grams = FormulaModel.OnStep(line.Grams.Value, step.Value), Size = size };
            }),
        ],
    };
}
