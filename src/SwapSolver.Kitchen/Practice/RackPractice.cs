using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Practice;

/// <summary>What is taken of cooling on a rack, out of the tin.</summary>
/// <param name="RoomCelsius">The kitchen [°C].</param>
/// <param name="StillAirPercent">Convection, of what the formula for still air gives [%].</param>
/// <param name="EvaporatedPercent">Share of the heat that leaves with steam from the skin [%].</param>
/// <param name="SliceCelsius">Core temperature at which a loaf may be sliced [°C].</param>
public sealed record RackPractice(Figure RoomCelsius, Figure StillAirPercent, Figure EvaporatedPercent, Figure SliceCelsius);
