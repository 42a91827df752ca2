namespace SwapSolver.Kitchen.Quantities;

/// <summary>An energy [kcal].</summary>
/// <param name="Value">Kilocalories.</param>
public readonly record struct Kilocalories(double Value)
{
    /// <summary>The same of an energy in kilojoules: 4.184 kJ are a kilocalorie, by the definition of the thermochemical
    /// calorie (from memory of NIST Special Publication 811).</summary>
    /// <param name="kilojoules">Energy [kJ].</param>
    public static Kilocalories OfKilojoules(double kilojoules) => new(kilojoules / 4.184);
}
