using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Forecasts;

/// <summary>How long a formula bakes and cools: heat that flows in from the oven, and a front at which water boils.</summary>
/// <param name="Practice">What the forecast goes by.</param>
/// <param name="Phrases">The sentences of its cautions.</param>
public sealed record Bake(BakePractice Practice, Phrases Phrases)
{
    /// <summary>Cells in half the width: for the time itself, and for what it may be, where only ratios of times count.</summary>
    internal const int Fine = 8, Coarse = 4;

    /// <summary>A known bake whose oven is further from this one is taken as another kind [K].</summary>
    private const double LikeOven = 15;

    /// <summary>A known bake of less than half or more than twice the mass is far [1].</summary>
    private const double LikeMass = 2;

    private readonly LoavesBaked loaves = new();

    // A copy may go by another practice, in which no loaf was baked yet.
    private Bake(Bake other) => (Practice, Phrases, loaves) = (other.Practice, other.Phrases, new LoavesBaked());

    /// <summary>The highest core temperature that can be asked for at a height [°C].</summary>
    /// <param name="altitude">Height above the sea [m], -500 to 6,000.</param>
    /// <exception cref="ArgumentOutOfRangeException">No kitchen lies there.</exception>
    public Celsius HighestCore(Metres altitude) => CoreTarget.Highest(BoilingAt(altitude), Practice.Core);

    /// <summary>The core temperature that a formula is baked to [°C].</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="conditions">How it is baked.</param>
    /// <exception cref="ArgumentOutOfRangeException">The height cannot be.</exception>
    public Celsius TargetOf(Formula formula, BakeConditions conditions) => Target(formula, conditions).Core;

    /// <summary>Batter that fills a tin well [g], for a formula that has no tin of its own to be compared with.</summary>
    /// <param name="tin">The tin.</param>
    public Grams WellFilling(Tin tin) => new TinFilling(Practice).Well(tin);

    /// <summary>The forecast for a formula.</summary>
    /// <param name="formula">The formula; where it states no oven or shape, usual ones are taken and said.</param>
    /// <param name="conditions">How it is baked.</param>
    /// <param name="draw">Which facts are looked at.</param>
    /// <exception cref="ArgumentOutOfRangeException">The height cannot be.</exception>
    public BakeForecast Foretell(Formula formula, BakeConditions conditions, Draw draw)
    {
        var model = ModelOf(conditions, draw);
        var target = Target(formula, conditions);
        var own = Case(model, formula, target.Core, toSlice: true);
        var forecast = Write(formula, conditions, target, own, KnownCase(model, conditions.Known));
        return forecast.TimeToCore is null ? forecast : forecast with { Variations = Otherwise(formula, conditions, own, draw) };
    }

    /// <summary>How a changed loaf bakes beside the one it came from.</summary>
    /// <param name="before">The formula that it came from.</param>
    /// <param name="after">The changed formula.</param>
    /// <param name="conditions">How both are baked; where a bake is known, it may be of either or of a third.</param>
    /// <param name="draw">Which facts are looked at.</param>
    /// <returns>The change; null where this oven never brings the core of the first there.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The height cannot be.</exception>
    public BakeChange? Compare(Formula before, Formula after, BakeConditions conditions, Draw draw)
    {
        var model = ModelOf(conditions, draw);
        var (first, second) = (Target(before, conditions), Target(after, conditions));
        var (own, changed) = (Case(model, before, first.Core, toSlice: false), Case(model, after, second.Core, toSlice: true));
        var known = KnownCase(model, conditions.Known);
        var forecast = Write(after, conditions, second, changed, known);
        if (Time(before, own, known) is not { } was || Ratio(changed, own, LogOf(Practice.Margins.AlikePercent)) is not { } ratio || forecast.TimeToCore is null)
        {
            return null;
        }

        return new BakeChange(was, new PercentRange(new Percent(100 * ratio.Low), new Percent(100 * ratio.Value), new Percent(100 * ratio.High)), forecast);
    }

    private static Celsius BoilingAt(Metres altitude) => SaturatedWater.BoilingPointAt(StandardAtmosphere.PressureAt(altitude));

    private BakeModel ModelOf(BakeConditions conditions, Draw draw) =>
        new(Practice, StandardAtmosphere.PressureAt(conditions.Altitude), conditions.IsColdStart, draw);

    private CoreTarget Target(Formula formula, BakeConditions conditions) =>
        CoreTarget.Of(conditions.Core, BoilingAt(conditions.Altitude), formula, Practice.Core);

    private BakeCase Case(BakeModel model, Formula formula, Celsius core, bool toSlice) => loaves.Of(
        new LoafToBake(Composition.Of(formula, model.Draw), formula.BatterMass, formula.Shape, formula.Oven, core, model.Pressure, model.IsColdStart, toSlice),
        () => new BakeCase(
            model.Run(formula, core, Doubts.None(), Fine, toSlice, isDrawn: true),
            Scattered<BakeRun>.Of(doubts => model.Run(formula, core, doubts, Coarse, toSlice))));

    private (KnownBake Bake, BakeCase Case)? KnownCase(BakeModel model, KnownBake? known) =>
        known is not null && Case(model, known.Formula, known.Core, toSlice: false) is { Fine.Baked: not null } found ? (known, found) : null;

    private BakeForecast Write(
        Formula formula, BakeConditions conditions, CoreTarget target, BakeCase own, (KnownBake Bake, BakeCase Case)? known)
    {
        var time = Time(formula, own, known);
        // Minutes of this kitchen by minutes of the model.
        var pace = known is { } anchor ? anchor.Bake.Baked.Value * 60 / anchor.Case.Fine.Baked!.Value : 1;
        var forecast = new BakeForecast(
            target.Core,
            time,
            time is { } window ? new Minutes(Math.Floor(window.Low.Value)) : null,
            Loss(own, known),
            new Celsius(Practice.Rack.SliceCelsius.Range.Typical),
            own.Fine.Cooled is null ? null : Minutes(own.Fine.Cooled.Value / 60, own.Runs.Of(LogCooled, LogOf(Practice.Margins.CoolingPercent))),
            own.Fine.Baked is { } baked ? CoreCurve.Of(own.Fine, baked, pace) : [],
            new TinFilling(Practice).Of(formula),
            BoilingAt(conditions.Altitude),
            known is null ? null : new Percent(100 / pace),
            known is { Bake.Formula.BakeLoss: not null },
            [],
            []);
        return forecast with { Cautions = new BakeCautions(Practice, Phrases).Of(formula, conditions, target, forecast) };
    }

    /// <summary>What the time would be with one thing done otherwise; what this oven never bakes is left out.</summary>
    private ImmutableArray<BakeVariation> Otherwise(Formula formula, BakeConditions conditions, BakeCase own, Draw draw)
    {
        var found = ImmutableArray.CreateBuilder<BakeVariation>();
        foreach (var (what, other, altitude) in new BakeVariations(Practice, Phrases).Of(formula, conditions.Altitude))
        {
            var there = conditions with { Altitude = altitude };
            var (model, core) = (ModelOf(there, draw), Target(other, there).Core);
            // Coarse cells are enough for a ratio: what they miss, they miss in both.
            var runs = Scattered<BakeRun>.Of(doubts => model.Run(other, core, doubts, Coarse, toSlice: false));
            if (runs.Value.Baked is null)
            {
                continue;
            }

            var change = LogBaked(runs.Value) - LogBaked(own.Runs.Value);
            var spread = own.Runs.With(runs).Of(
                static pair => LogBaked(pair.Second) - LogBaked(pair.First), change * Practice.Margins.OtherwisePercent.Range.Typical / 100);
            Percent Of(double logarithm) => new(100 * Math.Exp(logarithm));
            found.Add(new BakeVariation(what, new PercentRange(Of(spread.Low), Of(spread.Value), Of(spread.High))));
        }

        return found.ToImmutable();
    }

    private MinuteRange? Time(Formula formula, BakeCase own, (KnownBake Bake, BakeCase Case)? known)
    {
        if (own.Fine.Baked is not { } seconds)
        {
            return null;
        }

        if (known is not { } anchor)
        {
            return Minutes(seconds / 60, own.Runs.Of(LogBaked, LogOf(Practice.Margins.FreePercent)));
        }

        return Ratio(own, anchor.Case, Margin(formula, anchor.Bake.Formula)) is { } ratio
            ? new MinuteRange(Times(ratio.Low), Times(ratio.Value), Times(ratio.High))
            : null;

        Minutes Times(double factor) => new(anchor.Bake.Baked.Value * factor);
    }

    /// <summary>Time of one loaf by that of another [1]: what both share in doubt falls out.</summary>
    private static Spread? Ratio(BakeCase of, BakeCase by, double margin)
    {
        if (of.Fine.Baked is not { } one || by.Fine.Baked is not { } other)
        {
            return null;
        }

        var spread = of.Runs.With(by.Runs).Of(pair => LogBaked(pair.First) - LogBaked(pair.Second), margin);
        var ratio = one / other;
        return new Spread(ratio * Math.Exp(spread.Low - spread.Value), ratio, ratio * Math.Exp(spread.High - spread.Value));
    }

    /// <summary>What the form of the model adds where the known bake is such [1, as a logarithm].</summary>
    private double Margin(Formula formula, Formula known)
    {
        var margins = Practice.Margins;
        var mass = Math.Abs(Math.Log(formula.BatterMass / known.BatterMass));
        var (own, other) = (formula.Oven?.Dial.Value, known.Oven?.Dial.Value);
        return LogOf(
            mass > Math.Log(LikeMass) + 1e-9 ? margins.FarPercent
            : formula.Shape?.GetType() != known.Shape?.GetType() || Math.Abs((own - other) ?? 0) > LikeOven || formula.Oven?.Fan != known.Oven?.Fan ? margins.OtherShapePercent
            : margins.AlikePercent);
    }

    private PercentRange Loss(BakeCase own, (KnownBake Bake, BakeCase Case)? known)
    {
        var (margins, lost) = (Practice.Margins, own.Fine.LostShare);
        if (known is { Bake.Formula.BakeLoss: { } weighed } anchor)
        {
            // What the known bake lost beyond the model (water that moves, a tin that steams) is lost again.
            var both = own.Runs.With(anchor.Case.Runs).Of(static pair => pair.First.LostShare - pair.Second.LostShare, LogOf(margins.LossPercent) * weighed.Share);
            return Of(lost + weighed.Share - anchor.Case.Fine.LostShare, both.Value - both.Low, both.High - both.Value);
        }

        Spread Alone(Figure margin) => own.Runs.Of(static run => run.LostShare, LogOf(margin) * lost);
        var (below, above) = (Alone(margins.LossPercent), Alone(margins.LossAbovePercent));
        return Of(lost, below.Value - below.Low, above.High - above.Value);

        static PercentRange Of(double value, double below, double above) => new(Share(value - below), Share(value), Share(value + above));
        static Percent Share(double share) => new(100 * Math.Clamp(share, 0, 1));
    }

    private static MinuteRange Minutes(double minutes, Spread logarithm) => new(
        new Minutes(minutes * Math.Exp(logarithm.Low - logarithm.Value)),
        new Minutes(minutes),
        new Minutes(minutes * Math.Exp(logarithm.High - logarithm.Value)));

    private static double LogBaked(BakeRun run) => Math.Log(run.Baked ?? BakeModel.LongestBake);

    private static double LogCooled(BakeRun run) => Math.Log(run.Cooled ?? BakeModel.LongestCooling);

    private static double LogOf(Figure percent) => Math.Log(1 + (percent.Range.Typical / 100));
}
