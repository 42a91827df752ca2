using System.Collections.Frozen;
using System.Collections.Immutable;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Lines.Names;

namespace SwapSolver.Lines.Parts;

/// <summary>Weighs the parts of a line.</summary>
/// <param name="tables">What is known of measures.</param>
/// <param name="units">The units.</param>
/// <param name="system">Whose cups stand in this kitchen; null where that is not said.</param>
internal sealed class PartWeighing(MeasureTables tables, UnitWords units, MeasureSystem? system)
{
    /// <summary>No line of a kitchen weighs more [g].</summary>
    private static readonly Grams Most = new(100_000);

    /// <summary>A weight in brackets is believed to be of what it lies nearest to, within this factor [1].</summary>
    private const double Near = 1.6;

    /// <summary>With one of these, a word of the shell says that it is off.</summary>
    private static readonly FrozenSet<string> WithoutShell = FrozenSet.Create("without", "no", "not", "out", "off", "removed", "minus", "less", "excluding");

    /// <summary>What a part weighs, or why that cannot be said.</summary>
    /// <param name="part">The part.</param>
    /// <param name="name">What its name means.</param>
    /// <param name="wordsBefore">The words of the first part, where this is another.</param>
    public LineReading Read(LinePart part, FoundName name, ImmutableArray<string> wordsBefore)
    {
        var choice = MeasureChoice.Of(part.Measures);
        if (name.Ingredient is not { } ingredient)
        {
            return new LineReading(null, null, null, [], name.Candidates, name.Problem);
        }

        if (choice.Problem is not null)
        {
            return new LineReading(ingredient, null, null, [], [], choice.Problem);
        }

        if (choice.Counts.Any(one => one.Unit is VolumeUnit { Id: "litre" }) && ingredient.CountedUnits.Length > 0)
        {
            return new LineReading(ingredient, null, null, [], [], "L can be litres or the size of the eggs; write 'large' or 'litre'");
        }

        if (ingredient.CountedUnits.Length > 0 && choice.Counts.Any(one => one.Unit is MassUnit) && IsInShell([.. part.Name, .. part.Notes]))
        {
            return new LineReading(ingredient, null, null, [], [], "a weight with the shell; give how many of which size, or the weight without shell");
        }

        var said = part.Words.Select(units.FillingOf).FirstOrDefault(one => one is not null);
        var words = part.Words.Any(IsEggSize) ? part.Words : part.Words.AddRange(wordsBefore);
        var weighing = new Weighing(tables, system);
        Weighed Weigh(Measured one) => weighing.Weigh(one with { Filling = one.Filling ?? said, Words = words, UsualForm = name.Form }, ingredient);
        var weighed = choice.Counts.Select(Weigh).ToList();
        var less = choice.Less.Select(Weigh).ToList();
        if (weighed.Concat(less).FirstOrDefault(one => one.Problem is not null) is { } refused)
        {
            return new LineReading(ingredient, null, null, [], [], refused.Problem);
        }

        var grams = less.Aggregate(weighed.Select(one => one.Grams!.Value).Aggregate((left, right) => left + right), (left, right) => left - right.Grams!.Value);
        return Problem(grams) is { } problem
            ? new LineReading(ingredient, null, null, [], [], problem)
            : new LineReading(
                ingredient, grams, weighed[0].Egg, [.. choice.Assumed, .. name.Assumed, .. weighed.Concat(less).SelectMany(one => one.Assumed).Distinct(), .. CountedIn.Of(part)], [], null);
    }

    private static string? Problem(GramRange grams) =>
        grams.High > Most || !double.IsFinite(grams.High.Value) ? FormattableString.Invariant($"more than {Most.Value:0} g; no line of a kitchen weighs so much")
        : grams.Typical < Grams.None ? "more is taken away than there is"
        : null;

    private static bool IsInShell(IEnumerable<string> words)
    {
        var lower = words.Select(word => word.ToLowerInvariant()).ToList();
        return lower.Contains("unshelled") || (lower.Exists(word => word is "shell" or "shells") && !lower.Exists(WithoutShell.Contains));
    }

    private bool IsEggSize(string word) => tables.Eggs.All.Any(one => one.Names.Contains(word));

    /// <summary>The reading of a line such as 1 cup + 2 tbsp (150 g), where the weight in brackets or a note behind the last amount is of
    /// all together; null where it is of the last alone, or no such line. What lies nearer to the volumes is believed.</summary>
    public LineReading? BracketOfAll(ImmutableArray<LinePart> parts, IReadOnlyList<FoundName> names)
    {
        if (parts.Length < 2 || names.Any(name => name.Ingredient is null || name.Ingredient != names[0].Ingredient)
            || parts[..^1].Any(part => part.Measures.Any(found => found.Measured.Unit is MassUnit))
            || parts[^1].Measures.Where(found => found is { Place: Place.Bracket or Place.Note, Measured.Unit: MassUnit }).ToList() is not [var bracket, ..])
        {
            return null;
        }

        var volumes = parts.Select((part, place) => Read(part with { Measures = [.. part.Measures.Where(found => found.Place is not (Place.Bracket or Place.Note))] }, names[place], []).Grams?.Typical.Value ?? double.NaN).ToList();
        var whole = Read(parts[^1] with { Measures = [bracket with { Place = Place.Plain }] }, names[0], []);
        var (ofAll, ofLast) = (Apart(volumes.Sum(), whole), Apart(volumes[^1], whole));
        return ofAll < ofLast && ofAll < Near ? whole with { Assumed = whole.Assumed.Insert(0, $"the weight {PlaceOf(bracket)} is of all together") }
            : ofLast < Near ? null
            : LineReading.Refused($"the weight {PlaceOf(bracket)} can be of the last amount or of all together; write it alone") with { Ingredient = names[0].Ingredient };
    }

    private static string PlaceOf(Found weight) => weight.Place == Place.Note ? "behind the comma" : "in brackets";

    /// <summary>The factor between a mass and a reading, 1 where they are the same.</summary>
    private static double Apart(double grams, LineReading reading) =>
        reading.Grams is { } read ? Math.Exp(Math.Abs(Math.Log(grams / read.Typical.Value))) : double.NaN;
}
