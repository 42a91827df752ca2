using System.Collections.Frozen;
using SwapSolver.Kitchen.Ingredients;
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
    public static EggSize? Read(Line.Types.Size size) => Known.TryGetValue(size, out var known) ? known : null;

    /// <summary>The size in the contract's words.</summary>
    public static Line.Types.Size Write(EggSize size) => Known.First(pair => pair.Value == size).Key;
}
