using System.Collections.Immutable;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Learning;

/// <summary>
/// How likely each value of a fact is, on a grid over what is physically possible. The published range is where it starts: its
/// typical value is the most likely, and its ends hold 95 of 100. Each measurement then counts by Bayes' rule, as a normal error.
/// </summary>
public sealed class Belief
{
    /// <summary>Points of the grid. A measurement's scatter is some hundredths of what is possible or more, so that many
    /// points lie in it.</summary>
    private const int Points = 4001;

    /// <summary>A published range is taken to hold this share, and so is the range that is told.</summary>
    private const double Held = 0.95;

    /// <summary>Standard deviations from the middle to the end of what holds 95 of 100 of a normal distribution.</summary>
    private const double EndInDeviations = 1.959963984540054;

    private readonly ImmutableArray<double> logarithms;

    private Belief(Range possible, ImmutableArray<double> logarithms)
    {
        Possible = possible;
        this.logarithms = logarithms;
    }

    /// <summary>What is physically possible; no belief leaves it.</summary>
    public Range Possible { get; }

    /// <summary>What is believed before anything was measured.</summary>
    /// <param name="published">The published range.</param>
    /// <param name="possible">What is physically possible; wider than the published range, or as wide.</param>
    /// <exception cref="ArgumentException">The ranges are not in order, or there is nothing to learn.</exception>
    public static Belief Before(Range published, Range possible)
    {
        if (!published.IsInOrder || !possible.IsInOrder || possible.Low >= possible.High || published.Low < possible.Low || published.High > possible.High)
        {
            throw new ArgumentException($"{published} does not lie in {possible}", nameof(published));
        }

        // A side without width gets that of a grid step: then the typical value itself is what is believed.
        var least = (possible.High - possible.Low) / Points;
        var (below, above) = (Math.Max(least, (published.Typical - published.Low) / EndInDeviations), Math.Max(least, (published.High - published.Typical) / EndInDeviations));
        return new Belief(possible, Over(possible, value => -0.5 * Square((value - published.Typical) / (value < published.Typical ? below : above))));
    }

    /// <summary>What is believed after a measurement.</summary>
    public Belief After(Evidence evidence)
    {
        var place = 0;
        var before = logarithms;
        return new Belief(Possible, Over(Possible, value => before[place++] - (0.5 * Square((value - evidence.Value) / evidence.Scatter))));
    }

    /// <summary>What is believed after several.</summary>
    public Belief After(IEnumerable<Evidence> evidence) => evidence.Aggregate(this, (belief, one) => belief.After(one));

    /// <summary>The middle, and the range that holds 95 of 100.</summary>
    public Range Told() => new(At((1 - Held) / 2), At(0.5), At((1 + Held) / 2));

    /// <summary>The value below which a share of the belief lies.</summary>
    /// <param name="share">0 to 1.</param>
    public double At(double share)
    {
        var weights = Weights();
        var wanted = share * weights.Sum();
        var sum = 0.0;
        for (var place = 0; place < weights.Length; place++)
        {
            if (sum + weights[place] >= wanted)
            {
                // Within its step, where the share falls.
                var part = weights[place] > 0 ? (wanted - sum) / weights[place] : 0.5;
                return Math.Clamp(ValueAt(Possible, place) + ((part - 0.5) * Step(Possible)), Possible.Low, Possible.High);
            }

            sum += weights[place];
        }

        return Possible.High;
    }

    /// <summary>Standard deviation of what is believed.</summary>
    public double Deviation()
    {
        var weights = Weights();
        var all = weights.Sum();
        var mean = weights.Select((weight, place) => weight * ValueAt(Possible, place)).Sum() / all;
        return Math.Sqrt(weights.Select((weight, place) => weight * Square(ValueAt(Possible, place) - mean)).Sum() / all);
    }

    private static ImmutableArray<double> Over(Range possible, Func<double, double> logarithm) =>
        [.. Enumerable.Range(0, Points).Select(place => logarithm(ValueAt(possible, place)))];

    private static double Step(Range possible) => (possible.High - possible.Low) / (Points - 1);

    private static double ValueAt(Range possible, int place) => possible.Low + (place * Step(possible));

    private static double Square(double value) => value * value;

    /// <summary>By their largest: where prior and measurements are far apart, all are tiny and their ratios still count.</summary>
    private double[] Weights()
    {
        var most = logarithms.Max();
        return [.. logarithms.Select(logarithm => Math.Exp(logarithm - most))];
    }
}
