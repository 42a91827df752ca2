using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Wishes;

/// <summary>How near an ingredient comes to what it would stand in for, by the readings that a formula must keep. It only
/// says which of many are put into the model: what they are worth there, the model finds.</summary>
internal sealed class Nearness
{
    private readonly Formula reference;

    private readonly ImmutableArray<Ingredient> gone;

    private readonly ImmutableArray<Reading> readings;

    /// <summary>Gathers what is to be kept.</summary>
    /// <param name="reference">The formula that is known to work.</param>
    /// <param name="holds">What the answer must keep.</param>
    /// <param name="gone">What goes out.</param>
    public Nearness(Formula reference, ImmutableArray<Hold> holds, ImmutableArray<Ingredient> gone)
    {
        this.reference = reference;
        this.gone = gone;
        readings = [.. holds.Where(hold => hold.LeftOut is null).Select(ReadingOf).OfType<Reading>()];
    }

    /// <summary>How far a gram of an ingredient moves the readings where it takes the place of a gram of what goes out, in
    /// half widths of their bands; less is nearer, and below nothing where it brings a missed reading back.</summary>
    public double Of(Ingredient ingredient)
    {
        var sum = 0.0;
        foreach (var reading in readings)
        {
            var moved = reading.Pull(ingredient.Typical) - reading.Place[ingredient.Role];
            sum += reading.Standing switch
            {
                Standing.Above => moved,
                Standing.Below => -moved,
                _ => Math.Abs(moved),
            };
        }

        return sum;
    }

    /// <summary>What a reading says of a gram; null where the reference has no such reading.</summary>
    private Reading? ReadingOf(Hold hold)
    {
        if (hold.Balance.Read(reference, reference, Draws.Typical) is not { } own)
        {
            return null;
        }

        var anchor = hold.Balance.Anchor(reference, Draws.Typical);
        var basis = hold.Balance.Basis(reference);
        var low = hold.Band.Low?.Value ?? own.Value;
        var high = hold.Band.High?.Value ?? own.Value;
        var halfWidth = Math.Abs(high - low) / 2;
        var unit = halfWidth > 0 ? halfWidth : own.Value;
        if (unit <= 0)
        {
            return null;
        }

        double Pull(FactSheet facts) => (anchor(facts).Value - (own.Value * basis.PerGram(facts).Value)) / unit;
        return new Reading(Pull, Enum.GetValues<Role>().ToImmutableDictionary(role => role, role => PlaceOf(role, Pull)), hold.Band.Of(own));
    }

    /// <summary>What a gram of that whose place would be taken pulls: of what goes out in this role, else of what the
    /// reference has of it, else of all that goes out, else of the whole batter.</summary>
    private double PlaceOf(Role role, Func<FactSheet, double> pull)
    {
        var goes = reference.Lines.Where(line => gone.Contains(line.Ingredient)).ToList();
        var lines = new[] { goes.Where(line => line.Ingredient.Role == role), reference.Lines.Where(line => line.Ingredient.Role == role), goes, reference.Lines }
            .FirstOrDefault(some => some.Any(line => line.Grams > Grams.None), []);
        var mass = lines.Sum(line => line.Grams.Value);
        return mass > 0 ? lines.Sum(line => line.Grams.Value * pull(line.Ingredient.Typical)) / mass : 0;
    }

    private sealed record Reading(Func<FactSheet, double> Pull, ImmutableDictionary<Role, double> Place, Standing Standing);
}
