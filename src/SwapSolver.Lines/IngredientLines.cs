using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Lines.Names;
using SwapSolver.Lines.Parts;
using SwapSolver.Lines.Text;

namespace SwapSolver.Lines;

/// <summary>Reads lines of ingredients as cooks write them, into grams with a range. What is not sure is never guessed.</summary>
public sealed class IngredientLines
{
    /// <summary>Longest line that is read [characters].</summary>
    public const int MostLetters = 300;

    private readonly MeasureTables tables;

    private readonly NameTable names;

    private readonly PrintedIds ids;

    private readonly PartReader reader;

    private readonly LineSplit split;

    private readonly UnitWords units;

    private readonly Lazy<SpokenNames> spoken;

    /// <summary>Makes a reader.</summary>
    /// <param name="tables">What is known of measures.</param>
    /// <param name="pantry">The ingredients.</param>
    public IngredientLines(MeasureTables tables, Pantry pantry)
    {
        this.tables = tables;
        names = new NameTable(tables.Names, pantry);
        spoken = new(() => new SpokenNames(tables.Names, pantry, names));
        ids = new PrintedIds(pantry);
        units = new UnitWords(tables);
        var amounts = new AmountReader(units, tables.Words.Numbers);
        reader = new PartReader(units, amounts);
        split = new LineSplit(amounts);
    }

    /// <summary>The same names in running words.</summary>
    public SpokenNames Spoken => spoken.Value;

    /// <summary>What a line says: one reading, or one for each ingredient that a plus joins.</summary>
    /// <param name="line">The line; any text.</param>
    /// <param name="system">Whose cups stand in this kitchen; null: US customary, and said so.</param>
    public ImmutableArray<LineReading> Read(string line, MeasureSystem? system)
    {
        if (line.Length > MostLetters)
        {
            return [LineReading.Refused($"the line is longer than {MostLetters} letters; write one ingredient a line")];
        }

        var text = LineText.Of(line);
        if (string.IsNullOrWhiteSpace(text))
        {
            return [LineReading.Refused("the line is empty")];
        }

        if (text.TrimStart() is ['-' or '−' or '–', >= '0' and <= '9', ..])
        {
            return [LineReading.Refused("an amount below nothing; leave a space behind a dash that opens a list")];
        }

        var (words, named) = ids.In(text);
        ImmutableArray<LinePart> parts = [.. split.Parts(LineGrammar.Read(words)).Select(reader.Read)];
        return text.TrimEnd().EndsWith(':') && parts.All(part => part.Measures.IsEmpty)
            ? [LineReading.Refused("a heading, as it seems: no amount is in it")]
            : Join(parts, named, system);
    }

    /// <summary>What so many of an ingredient weigh, as eggs whose size is not said.</summary>
    /// <param name="amount">How many.</param>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="system">Whose eggs stand in this kitchen; null: US large, and said so.</param>
    public Weighed Count(Amount amount, Ingredient ingredient, MeasureSystem? system) =>
        new Weighing(tables, system).Weigh(new Measured(amount, null, null, null, []), ingredient);

    /// <summary>What an amount of a unit of an ingredient weighs.</summary>
    /// <param name="amount">How many.</param>
    /// <param name="unit">The unit in words.</param>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="system">Whose cups stand in this kitchen; null: US customary, and said so.</param>
    public Weighed Weigh(Amount amount, string unit, Ingredient ingredient, MeasureSystem? system)
    {
        var chunks = unit.Length > MostLetters ? [] : LineGrammar.Read(unit);
        if (units.At(chunks, 0) is not { } found || found.Length != chunks.Length)
        {
            return new Weighed(null, null, [], $"'{unit}' is not a unit that is known; write g, ml, cup, tbsp, tsp or another measure");
        }

        var filling = found.Before.Select(units.FillingOf).FirstOrDefault(one => one is not null);
        return new Weighing(tables, system).Weigh(new Measured(amount, found.Unit, found.System, filling, found.Before), ingredient);
    }

    private ImmutableArray<LineReading> Join(ImmutableArray<LinePart> parts, Ingredient? named, MeasureSystem? system)
    {
        var found = NamesOf(parts, named);
        var weighing = new PartWeighing(tables, units, system);
        if (weighing.BracketOfAll(parts, found) is { } whole)
        {
            return [whole];
        }

        var readings = ImmutableArray.CreateBuilder<LineReading>();
        for (var place = 0; place < parts.Length; place++)
        {
            var reading = weighing.Read(parts[place], found[place], place > 0 ? parts[0].Words : []);
            var same = readings.Count > 0 && reading.Ingredient is not null && reading.Ingredient == readings[^1].Ingredient;
            if (same && reading.Grams is { } more && readings[^1] is { Grams: { } grams } last && reading.Egg == last.Egg)
            {
                readings[^1] = last with { Grams = grams + more, Assumed = [.. last.Assumed.Union(reading.Assumed)] };
            }
            else
            {
                readings.Add(reading);
            }
        }

        return readings.ToImmutable();
    }

    /// <summary>The names of the parts. A part without a name takes that of the next part that has one, else of the last.</summary>
    private FoundName[] NamesOf(ImmutableArray<LinePart> parts, Ingredient? named)
    {
        var found = new FoundName[parts.Length];
        FoundName? last = null;
        for (var place = 0; place < parts.Length; place++)
        {
            var own = IsNamed(parts[place]) || parts.Length == 1 ? place
                : last is null ? Enumerable.Range(place, parts.Length - place).FirstOrDefault(other => IsNamed(parts[other]), place)
                : -1;
            found[place] = own < 0 ? last! : NameOf(parts[own], named, own > 0);
            last = found[place];
        }

        return found;
    }

    private bool IsNamed(LinePart part) => part.Name.Any(word => !tables.Names.Describes.Contains(word.ToLowerInvariant()));

    private FoundName NameOf(LinePart part, Ingredient? named, bool isBehindPlus)
    {
        if (named is not null && part.Name.Contains(PrintedIds.Placeholder))
        {
            return new FoundName(named, [], null, [], []);
        }

        if (isBehindPlus && names.PartOfEgg(part.Name) is { } egg)
        {
            return new FoundName(egg, [], null, [], []);
        }

        if (!part.Beside.IsEmpty && names.AreTwo(part.Name, part.Beside))
        {
            return names.Find(part.Name, []) with { Ingredient = null, Problem = "two ingredients in one line; write a line for each" };
        }

        var found = names.Find(part.Name, part.Notes);
        if (found.Ingredient is null && part.Name.Concat(part.Notes).Select(word => word.ToLowerInvariant()).FirstOrDefault(tables.Words.Foreign.ContainsKey) is { } word)
        {
            return found with { Problem = $"'{word}' looks like a {tables.Words.Foreign[word]} measure, and such lines are not read; write tbsp, tsp, ml or g and the English name" };
        }

        return part.Name.IsEmpty && found.Ingredient is null ? found with { Problem = "no ingredient is named" } : found;
    }
}
