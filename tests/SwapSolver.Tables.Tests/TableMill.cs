using System.Text;

namespace SwapSolver.Tables.Tests;

/// <summary>Makes tables that no registry would print, the same ones on every machine.</summary>
/// <param name="seed">Which run of tables.</param>
internal sealed class TableMill(int seed)
{
    private const string FullHeader = TestTables.Header + ",id,like,role,contains,may_contain,vegan,vegetarian,gluten_free";

    private const string Abbreviated = "~12006~^~SEEDS,CHIA SEEDS,DRIED~^5.80^486^16.54^30.74^4.80^42.12^34.4^^631^7.72^335^860^407^16^^^^^^^^^^^^^^^^^^^^^^^^^^^^^3.330^2.309^23.665^0^28.35^~1 oz~^^~~^0";

    private static readonly string[] Rows = [.. TestTables.Usda.Rows.Select(row => row.Text)];

    private static readonly string[] Weights = [.. TestTables.Weights.Rows.Select(row => row.Text)];

    private static readonly string[] Sprinkles =
    [
        "NaN", "Infinity", "-Infinity", "1e400", "1e-400", "-1", "-0", "99999999999999999999999999", "0x1F", "½", "\u0661", "\uFF11", "\0", "\"", "\"\"", "~", "^", ",",
        ";", "\t", "\r", "\n", "\r\n", "#", "\uFEFF", "\uFFFD", "\ud83c", "\u202E", "﷽", "e\u0301\u0301", " ", ".", "..", "5,8", "none", "yes", "milk;", "almond-meal", "usda-12006", "=1+1",
    ];

    private readonly Random random = new(seed);

    /// <summary>One piece of a table, with its header or without.</summary>
    public TableSlice Any() => random.Next(6) switch
    {
        0 => new TableSlice(Bytes(), Format: Format()),
        1 => new TableSlice(Mutated(Lines(Rows)), TestTables.Header, random.Next(1, 9000)),
        2 => new TableSlice(Mutated($"{TestTables.Header}\n{Lines(Rows)}"), Format: random.Next(2) == 0 ? null : TableFormat.Foods),
        3 => new TableSlice(Mutated(Abbreviated), Format: TableFormat.UsdaAbbreviated),
        4 => new TableSlice(Mutated($"ndb_no,amount,measure,grams\n{Lines(Weights)}"), Format: random.Next(2) == 0 ? null : TableFormat.HouseholdWeights),
        _ => new TableSlice(Mutated($"{Pick(Rows)},my-food,{Pick(Sprinkles)},flour,{Pick(Sprinkles)},,yes,,no"), FullHeader, 2),
    };

    /// <summary>Bytes as a client that does not look at them would send them.</summary>
    private string Bytes()
    {
        var bytes = new byte[random.Next(600)];
        random.NextBytes(bytes);
        return random.Next(2) == 0 ? Encoding.Latin1.GetString(bytes) : Encoding.UTF8.GetString(bytes);
    }

    private TableFormat? Format() => random.Next(4) is var format && format < 3 ? (TableFormat)format : null;

    private string Lines(string[] rows) =>
        string.Join('\n', Enumerable.Range(0, random.Next(1, 5)).Select(_ => Pick(rows)));

    /// <summary>Up to four letters flipped, doubled, taken out, cut off, or sprinkled with something.</summary>
    private string Mutated(string text)
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
                4 => text.Replace(',', Pick([";", "\t", ","])[0]),
                5 => Field(text),
                _ => text.Insert(place, Pick(Sprinkles)),
            };
        }

        return text;
    }

    /// <summary>Another value in place of a whole field.</summary>
    private string Field(string text)
    {
        var separator = text.Contains('^', StringComparison.Ordinal) ? '^' : ',';
        var fields = text.Split(separator);
        fields[random.Next(fields.Length)] = Pick(Sprinkles);
        return string.Join(separator, fields);
    }

    private string Pick(string[] texts) => texts[random.Next(texts.Length)];
}
