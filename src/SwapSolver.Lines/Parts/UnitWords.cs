using System.Collections.Frozen;
using System.Collections.Immutable;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Lines.Text;

namespace SwapSolver.Lines.Parts;

/// <summary>Finds units and the words before them: whose measure, and how it was filled.</summary>
internal sealed class UnitWords
{
    private const int MostWords = 3;

    private const int MostBefore = 3;

    private readonly FrozenDictionary<string, Unit> exact;

    private readonly FrozenDictionary<string, Unit> inSmallLetters;

    private readonly FrozenDictionary<string, Filling> fillings;

    private readonly FrozenDictionary<string, MeasureSystem> systems;

    private readonly FrozenSet<string> describes;

    /// <summary>Reads the units of the tables.</summary>
    public UnitWords(MeasureTables tables)
    {
        var all = tables.Units.SelectMany(unit => unit.Names.Select(name => (Name: name, Unit: unit))).ToList();
        exact = all.ToFrozenDictionary(pair => pair.Name, pair => pair.Unit, StringComparer.Ordinal);
        inSmallLetters = all.Where(pair => pair.Name.Length > 1 && !pair.Name.Any(char.IsUpper))
            .ToFrozenDictionary(pair => pair.Name, pair => pair.Unit, StringComparer.Ordinal);
        fillings = tables.Fillings.Named.SelectMany(filling => filling.Names.Select(name => (name, filling))).ToFrozenDictionary(pair => pair.name, pair => pair.filling, StringComparer.Ordinal);
        systems = tables.Words.Systems.ToFrozenDictionary(StringComparer.Ordinal);
        describes = tables.Names.Describes.ToFrozenSet(StringComparer.Ordinal);
    }

    /// <summary>How a word says that a measure was filled; null where it does not.</summary>
    public Filling? FillingOf(string word) => fillings.GetValueOrDefault(word);

    /// <summary>The unit at a place, with the words before it; null where no unit stands there.</summary>
    public (Unit Unit, MeasureSystem? System, ImmutableArray<string> Before, int Length)? At(ImmutableArray<Chunk> chunks, int place)
    {
        var before = ImmutableArray.CreateBuilder<string>();
        MeasureSystem? system = null;
        for (var at = place; at <= place + MostBefore && at < chunks.Length; at++)
        {
            if (chunks[at] is SignChunk { Kind: LineToken.Dash } && at == place)
            {
                continue;
            }

            if (chunks[at] is not WordChunk word)
            {
                return null;
            }

            if (Match(chunks, at) is { } match)
            {
                return (match.Unit, system, before.ToImmutable(), at + match.Length - place);
            }

            if (systems.TryGetValue(word.Lower, out var said))
            {
                system = said;
            }
            else if (!fillings.ContainsKey(word.Lower) && !describes.Contains(word.Lower))
            {
                return null;
            }

            before.Add(word.Lower);
        }

        return null;
    }

    private (Unit Unit, int Length)? Match(ImmutableArray<Chunk> chunks, int place)
    {
        for (var length = Math.Min(MostWords, chunks.Length - place); length > 0; length--)
        {
            var words = chunks.Skip(place).Take(length).OfType<WordChunk>().ToList();
            if (words.Count < length)
            {
                continue;
            }

            if (exact.TryGetValue(string.Join(' ', words.Select(word => word.Text)), out var unit)
                || inSmallLetters.TryGetValue(string.Join(' ', words.Select(word => word.Lower)), out unit))
            {
                return (unit, length);
            }
        }

        return null;
    }
}
