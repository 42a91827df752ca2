using System.Collections.Immutable;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Practice;

/// <summary>How an oven is set by other dials, from <c>data/measures/oven-dials.json</c>.</summary>
/// <param name="FanLess">How much lower a fan oven is set [°C apart].</param>
/// <param name="LowestOven">Below here a temperature is one of food, not of an oven [°C].</param>
/// <param name="GasMarks">Gas marks, from low to high.</param>
public sealed record OvenDials(Celsius FanLess, Celsius LowestOven, ImmutableArray<GasMark> GasMarks)
{
    /// <summary>The setting of an oven without fan.</summary>
    /// <param name="dial">The dial [°C].</param>
    /// <param name="fan">Whether it is the dial of an oven with fan.</param>
    public Celsius WithoutFan(Celsius dial, bool fan) => fan ? new Celsius(dial.Value + FanLess.Value) : dial;

    /// <summary>The setting of an oven with fan.</summary>
    /// <param name="dial">The dial without fan [°C].</param>
    public Celsius WithFan(Celsius dial) => new(dial.Value - FanLess.Value);

    /// <summary>The nearest gas mark; null where the oven is hotter or cooler than gas marks go.</summary>
    /// <param name="dial">The dial without fan [°C].</param>
    public GasMark? GasMarkOf(Celsius dial)
    {
        var nearest = GasMarks.MinBy(mark => Math.Abs(mark.Setting.Value - dial.Value));
        return nearest is not null && Math.Abs(nearest.Setting.Value - dial.Value) <= FanLess.Value / 2 ? nearest : null;
    }
}

/// <summary>One mark of a gas oven.</summary>
/// <param name="Mark">What stands on the dial, as <c>1/2</c> or <c>4</c>.</param>
/// <param name="Setting">The temperature that it stands for [°C].</param>
public sealed record GasMark(string Mark, Celsius Setting);
