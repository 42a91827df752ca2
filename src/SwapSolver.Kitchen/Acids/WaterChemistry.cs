using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Acids;

/// <summary>Constants of watery solutions at 25 °C.</summary>
/// <param name="SodaGramsPerMole">Molar mass of sodium bicarbonate [g/mol].</param>
/// <param name="CarbonDioxideGramsPerMole">Molar mass of carbon dioxide [g/mol].</param>
/// <param name="WaterExponent">Exponent of the ion product of water [pKw].</param>
/// <param name="DaviesSlope">Slope of the Davies equation for activity coefficients [(kg/mol)^1/2].</param>
/// <param name="DaviesTerm">Its linear term [kg/mol].</param>
/// <param name="MostIonicStrengthMolPerKg">Ionic strength up to which it is used; saltier water is taken as this salty [mol/kg].</param>
/// <param name="CarbonDioxideMolPerKgAtm">Solubility of carbon dioxide [mol/(kg atm)].</param>
/// <param name="BitartrateExponent">Exponent of the solubility product of potassium bitartrate [pKsp].</param>
public sealed record WaterChemistry(
    Figure SodaGramsPerMole,
    Figure CarbonDioxideGramsPerMole,
    Figure WaterExponent,
    Figure DaviesSlope,
    Figure DaviesTerm,
    Figure MostIonicStrengthMolPerKg,
    Figure CarbonDioxideMolPerKgAtm,
    Figure BitartrateExponent);
