using System.Collections.Immutable;
using SwapSolver.Kitchen.Acids;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>The pH of a batter and of its crumb, by the balance of all charges in its water.</summary>
/// <param name="Chemistry">What is known of acids, bases and buffers.</param>
/// <param name="Practice">What the forecast goes by.</param>
public sealed record Acidity(LeaveningChemistry Chemistry, AcidityPractice Practice)
{
    /// <summary>Share of its water that a crumb keeps at the least [1], whatever loss is stated: with less it is a rusk.</summary>
    private const double LeastWaterKept = 0.2;

    /// <summary>Facts without which nothing can be told.</summary>
    private static readonly ImmutableArray<Fact> Needed = [Fact.Water, Fact.Protein, Fact.Acid, Fact.Base];

    /// <summary>The forecast for a formula.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="pressure">Pressure of the air in the kitchen [Pa].</param>
    /// <param name="draw">Which facts are looked at.</param>
    /// <returns>The forecast; null where there is too little water for anything to dissolve in, or too little is known of a line.</returns>
    public AcidityForecast? Foretell(Formula formula, Pascals pressure, Draw draw)
    {
        if (Told(formula, draw) is not { } batter)
        {
            return null;
        }

        var isSalty = false;
        PhRange Ph(Func<Doubts, Solution> of) => Range(of, solved =>
            isSalty |= solved.IonicStrength >= Chemistry.Constants.MostIonicStrengthMolPerKg.Range.Typical);
        return new AcidityForecast(
            Ph(doubts => Mixed(batter, pressure, doubts)),
            Ph(doubts => Crumb(batter, doubts)),
            isSalty);
    }

    /// <summary>The pH of the crumb alone; null where <see cref="Foretell"/> gives none.</summary>
    public PhRange? ForetellCrumb(Formula formula, Draw draw) => Told(formula, draw) is { } batter
        ? Range(doubts => Crumb(batter, doubts), static _ => { })
        : null;

    /// <summary>Whether the high end of the crumb's range may reach a pH, by a few sums for each figure in doubt where <see cref="ForetellCrumb"/>
    /// looks for two solutions at rest: no is certain, yes is to be looked at. Null where nothing can be told.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="draw">Which facts are looked at.</param>
    /// <param name="ph">The pH.</param>
    public bool? CrumbMayReach(Formula formula, Draw draw, Ph ph)
    {
        if (Told(formula, draw) is not { } batter)
        {
            return null;
        }

        var none = Doubts.None();
        var typical = new ChargeBalance(Crumb(batter, none)).Solve();
        // Deviations add up as squares: where none of them takes as much as the root of their number's share of the way, all together do not
        // take the whole. Charge falls as the pH rises: where it is none or below at a pH, the solution lies no higher. The ionic strength is taken
        // as the typical one, which a moved figure hardly moves.
        var share = typical.Ph + ((ph.Value - typical.Ph) / Math.Sqrt(Math.Max(1, none.Asked.Count)));
        bool MayPass(string doubt, bool high) => new ChargeBalance(Crumb(batter, Doubts.Moved(doubt, high))).ChargeAt(share, typical.IonicStrength) > 0;
        return typical.Ph >= ph.Value || none.Asked.Any(doubt => MayPass(doubt, high: false) || MayPass(doubt, high: true));
    }

    /// <summary>The pH of the crumb from typical figures, without its range: to set one formula beside another.</summary>
    public Ph? TypicalCrumb(Formula formula, Draw draw) => Told(formula, draw) is { } batter
        ? new Ph(new ChargeBalance(Crumb(batter, Doubts.None())).Solve().Ph)
        : null;

    /// <summary>The formula as it is read here; null where nothing can be told of it.</summary>
    private Batter? Told(Formula formula, Draw draw) =>
        Needed.All(formula.States)
        && Batter.Of(formula, Chemistry, draw) is var batter
        && batter.Water > Practice.DryBelowWaterPercent.Range.Typical / 100 * formula.BatterMass.Value
            ? batter
            : null;

    /// <summary>The batter after mixing: what has dissolved by then, its carbon dioxide shared with the air that was beaten in.</summary>
    internal Solution Mixed(Batter batter, Pascals pressure, Doubts doubts)
    {
        var portions = batter.Portions(Chemistry, doubts);
        var mixed = Dissolved(batter, portions, doubts, portion => portion.DissolvedShare(doubts), keptShare: 1);
        var air = doubts.Of("air beaten in", Practice.AirBeatenInLitresPerKgWater) * GasLaw.AmountIn(pressure).Value / 1000;
        return mixed.In(batter.Water, portions.Soda, pressure.Value / Pascals.Atmosphere.Value, air);
    }

    /// <summary>The cooled crumb: every acid has reacted, and little carbon dioxide is left about it.</summary>
    internal Solution Crumb(Batter batter, Doubts doubts)
    {
        var portions = batter.Portions(Chemistry, doubts);
        var dissolved = Dissolved(batter, portions, doubts, static _ => 1, keptShare: 1 - portions.LeftShare);
        var turned = doubts.Of("soda turned to carbonate", Practice.TurnedToCarbonatePercent) / 100;
        var freed = turned * portions.LeftShare * portions.Sodas.Sum(soda => soda.Millimoles * soda.FreedByHeat);
        var water = Math.Max(batter.Water - batter.LostWater, LeastWaterKept * batter.Water);
        return dissolved.In(water, portions.Soda - freed, doubts.Of("carbon dioxide about the crumb", Practice.CrumbCarbonDioxideAtm), air: 0);
    }

    private WateryPart Dissolved(Batter batter, LeaveningPortions portions, Doubts doubts, Func<AcidPortion, double> share, double keptShare)
    {
        var part = new WateryPart(Chemistry, Practice, doubts);
        foreach (var portion in portions.Acids)
        {
            switch (portion.Acid)
            {
                case PureAcid acid:
                    part.AddAcid(acid, portion.Equivalents * share(portion));
                    break;
                case FoodAcid food:
                    part.AddFood(food, portion.Equivalents, portion.Of.Facts[Fact.Water] * portion.Of.Grams);
                    break;
            }
        }

        foreach (var soda in portions.Sodas)
        {
            // What heat drives off beside carbon dioxide, as ammonia, leaves where acid does not hold it.
            var held = 1 - ((1 - keptShare) * soda.FreedByHeat);
            part.AddSoda(soda.Base, soda.Millimoles, held);
        }

        foreach (var line in batter.Lines)
        {
            if (line.Leavener is null)
            {
                part.AddOther(line);
            }
        }

        return part;
    }

    private static PhRange Range(Func<Doubts, Solution> of, Action<SolvedSolution> see)
    {
        // The first is that of typical values, and one figure moved hardly makes another solution of it.
        SolvedSolution? first = null;
        var spread = Spread.Of(doubts =>
        {
            var solved = new ChargeBalance(of(doubts)).Solve(first);
            first ??= solved;
            see(solved);
            return solved.Ph;
        });
        return new PhRange(new Ph(spread.Low), new Ph(spread.Value), new Ph(spread.High));
    }
}
