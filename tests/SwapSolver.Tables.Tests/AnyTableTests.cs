using System.Diagnostics;
using System.Text;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Tables.Tests;

/// <summary>Kitchens import anything. No text may end in a fault or a long wait, and what goes in can be true.</summary>
public sealed class AnyTableTests
{
    private const int Cases = 100_000;

    /// <summary>The longest that one answer may take, by the acceptance of the project.</summary>
    private const int Retries = 5;

    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(50);

    private const string FullHeader = TestTables.Header + ",id,like,role,contains,may_contain,vegan,vegetarian,gluten_free";

    private const string Abbreviated = "~12006~^~SEEDS,CHIA SEEDS,DRIED~^5.80^486^16.54^30.74^4.80^42.12^34.4^^631^7.72^335^860^407^16^^^^^^^^^^^^^^^^^^^^^^^^^^^^^3.330^2.309^23.665^0^28.35^~1 oz~^^~~^0";

    private static readonly string[] Rows = [.. TestTables.Usda.Rows.Select(row => row.Text)];

    private static readonly string[] Weights = [.. TestTables.Weights.Rows.Select(row => row.Text)];

    private static readonly string[] Sprinkles =
    [
        "NaN", "Infinity", "-Infinity", "1e400", "1e-400", "-1", "-0", "99999999999999999999999999", "0x1F", "½", "\u0661", "\uFF11", "\0", "\"", "\"\"", "~", "^", ",",
        ";", "\t", "\r", "\n", "\r\n", "#", "\uFEFF", "\uFFFD", "\ud83c", "\u202E", "﷽", "e\u0301\u0301", " ", ".", "..", "5,8", "none", "yes", "milk;", "almond-meal", "usda-12006", "=1+1",
    ];

    [Fact]
    public void Any_text_is_answered_within_the_time_and_what_goes_in_can_be_true()
    {
        var random = new Random(31_415);
        var slow = 0;
        var (let, left) = (0, 0);
        _ = Enumerable.Range(0, 500).Sum(_ => TestTables.Reader.Read(Any(new Random(1))).LeftOut);
        for (var number = 0; number < Cases; number++)
        {
            var slice = Any(random);
            var reading = Timed(slice, out var took);
            if (took > Patience)
            {
                // The machine may have been away; a slow text is slow every time.
                slow += Enumerable.Range(0, Retries).Any(_ => TookAgain(slice) <= Patience) ? 0 : 1;
            }

            AssertCanBeTrue(reading);
            let += reading.Rows.Length + reading.Weights.Length;
            left += reading.LeftOut;
        }

        Assert.Equal(0, slow);
        // Texts that are all let in, or all left out, would show nothing.
        Assert.True(let > Cases / 4 && left > Cases / 4, $"{let} rows went in, {left} were left out");
    }

    private static TableReading Timed(TableSlice slice, out TimeSpan took)
    {
        var start = Stopwatch.GetTimestamp();
        var reading = TestTables.Reader.Read(slice);
        took = Stopwatch.GetElapsedTime(start);
        return reading;
    }

    private static void AssertCanBeTrue(TableReading reading)
    {
        Assert.True(reading.LeftOut >= 0 && (reading.LeftOut == 0 || reading.Problems.Length > 0));
        Assert.True(reading.Problems.All(problem => problem.Line >= 1 && problem.Reason.Length > 0 && problem.WayOut.Length > 0));
        Assert.Equal(reading.Foods.Length, reading.Foods.Select(food => food.Id).Distinct().Count());
        foreach (var food in reading.Foods)
        {
            Assert.Matches("^[a-z0-9-]{1,64}$", food.Id);
            Assert.InRange(food.Name.Length, 1, 200);
            double Typical(Fact fact) => food.Figures.TryGetValue(fact, out var figure) ? figure.Range.Typical : 0;
            Fact[] whole = [Fact.Water, Fact.Protein, Fact.Fat, Fact.Carbohydrate, Fact.Ash, Fact.Alcohol, Fact.Other];
            Assert.InRange(whole.Sum(Typical), food.Figures.ContainsKey(Fact.Ash) ? 98.5 - 1e-9 : 86.5, 101.5 + 1e-9);
            Assert.True(Typical(Fact.SaturatedFat) <= Typical(Fact.Fat) + 0.0051);
            foreach (var (fact, figure) in TestTables.IngredientOf(food).Figures)
            {
                Assert.True(figure.Range.IsInOrder && figure.Range.Low >= 0 && figure.Range.High <= fact.Most, $"{fact} of {food.Name}: {figure.Range}");
            }
        }

        Assert.True(reading.Weights.All(weight => weight.Measure.Amount > 0 && double.IsFinite(weight.Measure.Grams.Value) && weight.Measure.Grams.Value > 0));
    }

    private static TableSlice Any(Random random) => random.Next(6) switch
    {
        0 => new TableSlice(Bytes(random), Format: Format(random)),
        1 => new TableSlice(Mutated(random, Lines(random, Rows)), TestTables.Header, random.Next(1, 9000)),
        2 => new TableSlice(Mutated(random, $"{TestTables.Header}\n{Lines(random, Rows)}"), Format: random.Next(2) == 0 ? null : TableFormat.Foods),
        3 => new TableSlice(Mutated(random, Abbreviated), Format: TableFormat.UsdaAbbreviated),
        4 => new TableSlice(Mutated(random, $"ndb_no,amount,measure,grams\n{Lines(random, Weights)}"), Format: random.Next(2) == 0 ? null : TableFormat.HouseholdWeights),
        _ => new TableSlice(Mutated(random, $"{Pick(random, Rows)},my-food,{Pick(random, Sprinkles)},flour,{Pick(random, Sprinkles)},,yes,,no"), FullHeader, 2),
    };

    /// <summary>Bytes as a client that does not look at them would send them.</summary>
    private static string Bytes(Random random)
    {
        var bytes = new byte[random.Next(600)];
        random.NextBytes(bytes);
        return random.Next(2) == 0 ? Encoding.Latin1.GetString(bytes) : Encoding.UTF8.GetString(bytes);
    }

    private static TableFormat? Format(Random random) => random.Next(4) is var format && format < 3 ? (TableFormat)format : null;

    private static string Lines(Random random, string[] rows) =>
        string.Join('\n', Enumerable.Range(0, random.Next(1, 5)).Select(_ => Pick(random, rows)));

    /// <summary>Up to four letters flipped, doubled, taken out, cut off, or sprinkled with something.</summary>
    private static string Mutated(Random random, string text)
    {
        for (var count = random.Next(5); count > 0 && text.Length > 0; count--)
        {
            var place = random.Next(text.Length);
            text = random.Next(7) switch
            {
                0 => text.Remove(place, 1).Insert(place, ((char)random.Next(0, 0x250)).ToString()),
                1 => text.Remove(place, 1),
                2 => text.Insert(place, text[place].ToString()),
                3 => text[..place],
                4 => text.Replace(',', Pick(random, [";", "\t", ","])[0]),
                5 => Field(random, text),
                _ => text.Insert(place, Pick(random, Sprinkles)),
            };
        }

        return text;
    }

    /// <summary>Another value in place of a whole field.</summary>
    private static string Field(Random random, string text)
    {
        var separator = text.Contains('^', StringComparison.Ordinal) ? '^' : ',';
        var fields = text.Split(separator);
        fields[random.Next(fields.Length)] = Pick(random, Sprinkles);
        return string.Join(separator, fields);
    }

    private static string Pick(Random random, string[] texts) => texts[random.Next(texts.Length)];

    private static TimeSpan TookAgain(TableSlice slice)
    {
        Timed(slice, out var took);
        return took;
    }
}
