namespace SwapSolver.Learning;

/// <summary>What one more kitchen test would be worth.</summary>
/// <param name="Fact">The fact that it measures.</param>
/// <param name="Now">How wide the answer is for this fact now [% of the answer].</param>
/// <param name="After">How wide it would be after the test [% of the answer].</param>
/// <param name="Matters">How wide an answer may be before it matters [% of the answer].</param>
public sealed record TestWorth(LearnableFact Fact, double Now, double After, double Matters)
{
    /// <summary>By how much it sharpens the answer, counted in what matters.</summary>
    public double Worth => (Now - After) / Matters;

    /// <summary>The worth of one more test of a fact.</summary>
    /// <param name="fact">The fact.</param>
    /// <param name="belief">What is believed of it now.</param>
    /// <param name="effect">How much of the answer hangs on it: the answer's relative change by the fact's.</param>
    /// <param name="matters">How wide an answer may be before it matters [% of the answer].</param>
    public static TestWorth Of(LearnableFact fact, Belief belief, double effect, double matters)
    {
        var told = belief.Told();
        var now = 100 * effect * (told.High - told.Low) / told.Typical;
        var (known, measured) = (belief.Deviation(), fact.Scatter * fact.Published.Typical);
        // Two normal errors join by their precisions; a belief is near enough to normal for a ranking.
        return new TestWorth(fact, now, now / Math.Sqrt(1 + (known * known / (measured * measured))), matters);
    }
}
