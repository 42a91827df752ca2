using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>What a convention takes off the carbohydrate, besides fibre and organic acid.</summary>
/// <param name="Name">The convention in words.</param>
/// <param name="ErythritolTakenOff">Share of the erythritol [%].</param>
/// <param name="OtherPolyolsTakenOff">Share of the other polyols [%].</param>
/// <param name="AlluloseTakenOff">Share of the allulose [%].</param>
public sealed record NetCarbohydrateConvention(
    string Name,
    Percent ErythritolTakenOff,
    Percent OtherPolyolsTakenOff,
    Percent AlluloseTakenOff);
