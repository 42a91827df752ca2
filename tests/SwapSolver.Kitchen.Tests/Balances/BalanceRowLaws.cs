using CsCheck;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Tests.Balances;

/// <summary>What must be true of the rows of every balance: the number that is printed is the number that the
/// solver was held to.</summary>
public sealed class BalanceRowLaws
{
    private const int Tries = 4000;

    /// <summary>Share of a row's own size below which its slack is rounding: the reading lies on the end of the band [1].</summary>
    private const double OnTheEnd = 1e-9;

    public static TheoryData<string> Every => [.. EveryBalance.Ids(_ => true)];

    public static TheoryData<string> EveryAroundAReference => [.. EveryBalance.Ids(balance => balance is not LeftOut)];

    [Theory]
    [MemberData(nameof(Every))]
    public void The_rows_hold_where_the_reading_is_in_its_band_and_exact_rows_nowhere_else(string id)
    {
        var balance = EveryBalance.Find(id);
        int inside = 0, outside = 0;
        AnyBowl.Pair.Sample(
            pair =>
            {
                if (balance.Read(pair.Variant, pair.Reference, Draws.Typical) is not { } level)
                {
                    return;
                }

                foreach (var band in BandsOf(balance, pair.Reference))
                {
                    var rows = balance.Rows(pair.Reference, band, Draws.Typical);
                    var slacks = rows.Select(row => Slack(row, pair.Variant)).ToList();
                    if (slacks.Any(slack => slack != 0 && Math.Abs(slack) < OnTheEnd))
                    {
                        continue;
                    }

                    var isInside = band.Of(level, OnTheEnd) == Standing.Inside;
                    var holds = slacks.All(slack => slack >= 0);
                    Assert.True(isInside || !holds, $"{id}: rows hold, but {level} is outside {band}");
                    Assert.True(holds || !isInside || rows.Any(row => !row.Exact), $"{id}: exact rows fail, but {level} is inside {band}");
                    Interlocked.Increment(ref isInside ? ref inside : ref outside);
                }
            },
            iter: Tries);

        Assert.True(inside > 0 && outside > 0, $"{inside} bowls inside and {outside} outside: the law was not tried on both");
    }

    [Theory]
    [MemberData(nameof(Every))]
    public void Exact_rows_of_one_side_hold_exactly_where_the_reading_keeps_that_side(string id)
    {
        var balance = EveryBalance.Find(id);
        AnyBowl.Pair.Sample(
            pair =>
            {
                if (balance.Read(pair.Variant, pair.Reference, Draws.Typical) is not { } level)
                {
                    return;
                }

                foreach (var band in BandsOf(balance, pair.Reference))
                {
                    foreach (var side in balance.Rows(pair.Reference, band, Draws.Typical).Where(row => row.Exact).GroupBy(row => row.Side))
                    {
                        var slacks = side.Select(row => Slack(row, pair.Variant)).ToList();
                        if (slacks.All(slack => slack == 0 || Math.Abs(slack) >= OnTheEnd))
                        {
                            var missed = side.Key == Side.Low ? Standing.Below : Standing.Above;
                            var half = side.Key == Side.Low ? band with { High = null } : band with { Low = null };
                            Assert.Equal(half.Of(level, OnTheEnd) != missed, slacks.All(slack => slack >= 0));
                        }
                    }
                }
            },
            iter: Tries);
    }

    [Theory]
    [MemberData(nameof(EveryAroundAReference))]
    public void The_loaf_that_is_known_to_work_keeps_its_own_rows(string id)
    {
        var balance = EveryBalance.Find(id);
        AnyBowl.Formula.Sample(
            reference =>
            {
                var band = balance.Band(reference, Draws.Typical);
                Assert.All(balance.Rows(reference, band, Draws.Typical), row => Assert.True(
                    Slack(row, reference) > -OnTheEnd, $"{id}: the reference breaks its own row on the side {row.Side} of {band}"));
            },
            iter: Tries);
    }

    /// <summary>The default band and, where a caller may set one, a tenth either way of the reference's reading.</summary>
    private static IEnumerable<Band> BandsOf(Balance balance, Formula reference)
    {
        yield return balance.Band(reference, Draws.Typical);
        if (balance is not LeftOut && balance.Read(reference, reference, Draws.Typical) is { } own)
        {
            yield return new Band(new Level(own.Value * 0.9), new Level(own.Value * 1.1));
        }
    }

    /// <summary>What is left of a row, as a share of the sizes that are added up in it [1].</summary>
    private static double Slack(Row row, Formula formula)
    {
        var terms = formula.Lines.Select(line => row.Coefficient(line.Ingredient.Typical).Value * line.Grams.Value).ToList();
        var size = terms.Sum(Math.Abs) + Math.Abs(row.Least);
        return size == 0 ? 0 : (terms.Sum() - row.Least) / size;
    }
}
