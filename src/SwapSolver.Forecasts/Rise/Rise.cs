using System.Collections.Immutable;
using SwapSolver.Kitchen.Acids;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Forecasts;

/// <summary>How a batter rises by its soda and powder: the gas against time, the wait it bears, what is left behind.</summary>
/// <param name="Acidity">The forecast of acidity.</param>
/// <param name="Practice">What the forecast goes by.</param>
/// <param name="Phrases">The sentences of its cautions.</param>
public sealed record Rise(Acidity Acidity, RisePractice Practice, Phrases Phrases)
{
    private LeaveningChemistry Chemistry => Acidity.Chemistry;

    /// <summary>The forecast for a formula.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="conditions">How it is handled.</param>
    /// <param name="draw">Which facts are looked at.</param>
    /// <exception cref="ArgumentOutOfRangeException">The height above the sea, or a time, cannot be.</exception>
    public RiseForecast Foretell(Formula formula, RiseConditions conditions, Draw draw)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(conditions.Mixing.Value, nameof(conditions));
        // Not ThrowIfNegative: a wait of -0 min is none.
        ArgumentOutOfRangeException.ThrowIfLessThan(conditions.Bench.Value, 0, nameof(conditions));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(conditions.Oven.Value, nameof(conditions));
        var pressure = StandardAtmosphere.PressureAt(conditions.Altitude);
        var none = Doubts.None();
        var lines = Batter.LinesOf(formula, Chemistry, draw);
        var release = Release(lines, conditions, none);
        var held = new HeldGas(release, Practice.HalfLifeMinutes.Range.Typical);
        var total = new Millimoles(release.Total);
        var setting = new Celsius(Practice.CrumbSettingCelsius.Range.Typical);
        var forecast = new RiseForecast(
            Acidity.Foretell(formula, pressure, draw),
            Freed(release),
            Curve(release, held, conditions, pressure),
            GasLaw.VolumeOf(total, conditions.Bowl, pressure),
            GasLaw.VolumeOf(total, setting, pressure),
            release.Portions.Soda > 0 ? Neutralised(lines) : null,
            SodaLeft(formula, lines),
            release.Total > 0 ? Window(lines, conditions) : null,
            new Percent(100 * LostOnBench(release, held)),
            pressure,
            StandardAtmosphere.BoilingPointAt(pressure),
            LeaveningCut.At(conditions.Altitude, Practice),
            []);
        return forecast with
        {
            Cautions = new RiseCautions(Acidity.Practice, Practice, Phrases).Of(formula, forecast, release.Portions, conditions),
        };
    }

    /// <summary>The forecast from typical figures, without ranges and cautions: to set one formula beside another.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="conditions">How it is handled.</param>
    /// <param name="draw">Which facts are looked at.</param>
    public RiseSketch Sketch(Formula formula, RiseConditions conditions, Draw draw)
    {
        var release = Release(Batter.LinesOf(formula, Chemistry, draw), conditions, Doubts.None());
        Minutes? window = release.Total > 0
            ? new Minutes(new HeldGas(release with { Bench = double.PositiveInfinity }, Practice.HalfLifeMinutes.Range.Typical)
                .UntilLost(Practice.LossBornePercent.Range.Typical / 100, Practice.LongestWindowMinutes.Range.Typical))
            : null;
        return new RiseSketch(Freed(release), window, Acidity.TypicalCrumb(formula, draw));
    }

    private GasRelease Release(ImmutableArray<BatterLine> lines, RiseConditions conditions, Doubts doubts) => new(
        LeaveningPortions.Of(lines, Chemistry, doubts),
        conditions.Mixing.Value,
        conditions.Bench.Value,
        conditions.Oven.Value,
        Practice.StandardBenchMinutes.Range.Typical,
        doubts);

    private static FreedGas Freed(GasRelease release)
    {
        var mixed = release.ByAcid(release.Mixing);
        var stood = release.ByAcid(release.Mixing + release.Bench);
        return new FreedGas(
            new Millimoles(mixed),
            new Millimoles(stood - mixed),
            new Millimoles(release.Portions.Neutralised - stood),
            new Millimoles(release.ByHeat));
    }

    private static ImmutableArray<GasPoint> Curve(GasRelease release, HeldGas held, RiseConditions conditions, Pascals pressure)
    {
        var (mixed, stood) = (release.Mixing, release.Mixing + release.Bench);
        var end = stood + release.Oven;
        var minutes = Enumerable.Range(0, (int)Math.Ceiling(end)).Select(minute => (double)minute)
            .Concat([mixed, stood, end])
            .Distinct()
            .Order()
            .ToList();
        return
        [
            .. minutes.Zip(held.At(minutes), (minute, kept) => new GasPoint(
                new Minutes(minute),
                minute <= mixed ? RiseStage.Mixing : minute <= stood ? RiseStage.Bench : RiseStage.Oven,
                GasLaw.VolumeOf(new Millimoles(release.By(minute)), conditions.Bowl, pressure),
                GasLaw.VolumeOf(new Millimoles(kept), conditions.Bowl, pressure))),
        ];
    }

    private static double LostOnBench(GasRelease release, HeldGas held)
    {
        var atEnds = held.At([release.Mixing, release.Mixing + release.Bench]).ToList();
        var potential = atEnds[0] + release.Total - release.By(release.Mixing);
        var leaked = atEnds[0] + release.By(release.Mixing + release.Bench) - release.By(release.Mixing) - atEnds[1];
        return potential > 0 ? leaked / potential : 0;
    }

    private PercentRange Neutralised(ImmutableArray<BatterLine> lines)
    {
        var spread = Spread.Of(doubts => 100 * (1 - LeaveningPortions.Of(lines, Chemistry, doubts).LeftShare));
        return new PercentRange(new Percent(Math.Max(0, spread.Low)), new Percent(spread.Value), new Percent(Math.Min(100, spread.High)));
    }

    private GramRange SodaLeft(Formula formula, ImmutableArray<BatterLine> lines)
    {
        var soda = Chemistry.Constants.SodaGramsPerMole.Range.Typical / 1000;
        var baked = formula.BakedMass.Value;
        var spread = Spread.Of(doubts =>
        {
            var portions = LeaveningPortions.Of(lines, Chemistry, doubts);
            var staying = portions.Sodas.Where(portion => portion.StaysInCrumb).Sum(portion => portion.Millimoles);
            return baked > 0 ? 100 * soda * staying * portions.LeftShare / baked : 0;
        });
        return new GramRange(new Grams(Math.Max(0, spread.Low)), new Grams(spread.Value), new Grams(spread.High));
    }

    private MinuteRange Window(ImmutableArray<BatterLine> lines, RiseConditions conditions)
    {
        var longest = Practice.LongestWindowMinutes.Range.Typical;
        // As logarithms: half and twice the pace are as far from the usual one.
        var spread = Spread.Of(doubts => Math.Log(new HeldGas(
                Release(lines, conditions, doubts) with { Bench = double.PositiveInfinity },
                doubts.Of("half-life of the gas held", Practice.HalfLifeMinutes))
            .UntilLost(doubts.Of("loss that is borne", Practice.LossBornePercent) / 100, longest)));
        return new MinuteRange(
            new Minutes(Math.Exp(spread.Low)), new Minutes(Math.Exp(spread.Value)), new Minutes(Math.Min(longest, Math.Exp(spread.High))));
    }
}
