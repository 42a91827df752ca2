namespace SwapSolver.Kitchen.Practice;

/// <summary>The components that a food is counted as, each with its polynomials; good from 0 to 150 °C.</summary>
/// <param name="Water">Water.</param>
/// <param name="Protein">Protein.</param>
/// <param name="Fat">Fat.</param>
/// <param name="Carbohydrate">Carbohydrate without its fibre; sugar alcohols too.</param>
/// <param name="Fibre">Fibre.</param>
/// <param name="Ash">Ash; salt too.</param>
public sealed record ThermalComponents(
    ThermalComponent Water,
    ThermalComponent Protein,
    ThermalComponent Fat,
    ThermalComponent Carbohydrate,
    ThermalComponent Fibre,
    ThermalComponent Ash);
