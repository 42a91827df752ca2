using CsCheck;

namespace SwapSolver.Forecasts.Tests;

/// <summary>What holds for any mixture at all.</summary>
public sealed class ChargeBalanceLaws
{
    private static readonly string[] Things =
        [.. Mixture.Chemistry.Dissociations.Keys.Concat(Mixture.Chemistry.Ions.Keys).Order(StringComparer.Ordinal)];

    private static Gen<Dictionary<string, double>> AnyMixture =>
        Gen.Select(Gen.Int[0, Things.Length - 1], Gen.Double[-6, 1]).Array[0, 6]
            .Select(parts => parts.GroupBy(part => Things[part.Item1]).ToDictionary(group => group.Key, group => group.Sum(part => Math.Pow(10, part.Item2))));

    private static Gen<double?> AnyPressure => Gen.OneOf(Gen.Const((double?)null), Gen.Double[-5, 1].Select(log => (double?)Math.Pow(10, log)));

    [Fact]
    public void Every_mixture_comes_to_rest_and_its_charges_cancel() => Gen.Select(AnyMixture, AnyPressure).Sample(
        (mixture, pressure) =>
        {
            var found = new ChargeBalance(Mixture.Of(mixture, pressure)).Solve();

            Assert.InRange(found.Ph, -2, 16);
            Assert.InRange(found.IonicStrength, 0, 0.5);
            // Beside sums of charge of up to some hundred mol/kg: what is left is rounding.
            Assert.Equal(0, found.Residual, 1e-8 * (1 + mixture.Values.Sum()));
        },
        iter: 2000);

    [Fact]
    public void Where_a_solution_is_looked_for_first_moves_nothing() => Gen.Select(AnyMixture, AnyPressure, Gen.Double[0.5, 2]).Sample(
        (mixture, pressure, times) =>
        {
            var other = mixture.ToDictionary(part => part.Key, part => part.Value * times);
            var (alone, like) = (new ChargeBalance(Mixture.Of(mixture, pressure)).Solve(), new ChargeBalance(Mixture.Of(other, pressure)).Solve());

            // Where nothing buffers, the last digits of many moles of ions move the pH by this much.
            Assert.Equal(alone.Ph, new ChargeBalance(Mixture.Of(mixture, pressure)).Solve(like).Ph, 1e-6);
            Assert.Equal(alone.Ph, new ChargeBalance(Mixture.Of(mixture, pressure)).Solve(alone).Ph, 1e-6);
        },
        iter: 20_000);

    [Fact]
    public void More_strong_base_never_makes_a_salty_mixture_more_acid() => Gen.Select(AnyMixture, AnyPressure, Gen.Double[0.001, 1]).Sample(
        (mixture, pressure, more) =>
        {
            // So much salt that the ionic strength stands still: else the salt of the base itself would move the pH.
            double Ph() => new ChargeBalance(Mixture.Of(mixture, pressure) with { InertSalt = 1 }).Solve().Ph;
            var before = Ph();
            // Calcium neither pairs with anything here nor falls out.
            mixture["calcium"] = mixture.GetValueOrDefault("calcium") + more;
            var after = Ph();

            Assert.True(after >= before - 1e-9, $"{before} fell to {after}");
        },
        iter: 1000);

    [Fact]
    public void Pure_water_is_neutral() => Assert.Equal(7.0, new ChargeBalance(Mixture.Of(Mixture.Parts(string.Empty))).Solve().Ph, 0.01);

    [Fact]
    public void An_even_buffer_by_itself_reads_its_own_pH()
    {
        var solution = Mixture.Of(Mixture.Parts(string.Empty)) with { BufferSlope = 0.05, BufferSlopeTimesPh = 0.05 * 6.3 };

        Assert.Equal(6.3, new ChargeBalance(solution).Solve().Ph, 0.001);
    }
}
