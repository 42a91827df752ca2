using System.Collections.Frozen;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Service.Faults;
using SwapSolver.V1;

namespace SwapSolver.Service.Translation;

/// <summary>Egg sizes, to and from the contract.</summary>
internal static class EggSizes
{
    private static readonly FrozenDictionary<Line.Types.Size, EggSize> Known = new Dictionary<Line.Types.Size, EggSize>
    {
        [Line.Types.Size.SmallUs] = EggSize.SmallUs,
        [Line.Types.Size.MediumUs] = EggSize.MediumUs,
        [Line.Types.Size.LargeUs] = EggSize.LargeUs,
        [Line.Types.Size.ExtraLargeUs] = EggSize.ExtraLargeUs,
        [Line.Types.Size.JumboUs] = EggSize.JumboUs,
        [Line.Types.Size.SmallEu] = EggSize.SmallEu,
        [Line.Types.Size.MediumEu] = EggSize.MediumEu,
        [Line.Types.Size.LargeEu] = EggSize.LargeEu,
        [Line.Types.Size.ExtraLargeEu] = EggSize.ExtraLargeEu,
    }.ToFrozenDictionary();

    /// <summary>The size, or null where none is said.</summary>
    /// <param name="size">The size of the contract.</param>
    /// <param name="path">Its field.</param>
    /// <param name="problems">Where a size that the contract does not know is named.</param>
    public static EggSize? Read(Line.Types.Size size, string path, ProblemList problems)
    {
        if (Known.TryGetValue(size, out var known))
        {
            return known;
        }

        if (size != Line.Types.Size.Unspecified)
        {
            problems.Add(path, size.ToString(), "is no egg size", "give LARGE_US or another size of the contract");
        }

        return null;
    }

    /// <summary>The size in the contract's words.</summary>
    public static Line.Types.Size Write(EggSize size) => Known.First(pair => pair.Value == size).Key;
}
