using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Measures;

/// <summary>So many cups or spoons that come near a mass. It is approximate: what they weigh stands beside them.</summary>
/// <param name="Whole">Whole measures.</param>
/// <param name="Part">The part beside them, as <c>1/2</c>; empty where there is none.</param>
/// <param name="Count">How many in all.</param>
/// <param name="Unit">Id of the measure, as <c>tablespoon</c>.</param>
/// <param name="Weighs">What so many weigh with the rest, scant to heaped as cooks fill them [g].</param>
/// <param name="Rest">What is added in a smaller measure; null where nothing is.</param>
public sealed record HouseholdAmount(int Whole, string Part, Amount Count, string Unit, GramRange Weighs, HouseholdAmount? Rest = null)
{
    /// <summary>Whether the measure stands in the plural.</summary>
    public bool IsSeveral => Count.High > 1;

    /// <summary>The number as cooks write it, as <c>1 1/2</c>.</summary>
    public string Number => (Whole, Part) switch
    {
        (0, _) => Part,
        (_, "") => Whole.ToString(System.Globalization.CultureInfo.InvariantCulture),
        _ => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Whole} {Part}"),
    };
}
