using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Practice;

/// <summary>What is added to a forecast of time for the form of its model, beside the ranges of its figures.</summary>
/// <param name="FreePercent">With no known bake [%].</param>
/// <param name="AlikePercent">Known bake of a like loaf [%].</param>
/// <param name="OtherShapePercent">Known bake of another shape or a clearly other oven [%].</param>
/// <param name="FarPercent">Known bake of less than half or more than twice the mass [%].</param>
/// <param name="LossPercent">Bake loss [% of it].</param>
/// <param name="LossAbovePercent">Bake loss upward where no known bake was weighed: what is left out only adds to it [% of it].</param>
/// <param name="OtherwisePercent">One thing done otherwise [% of what it changes, as logarithms].</param>
/// <param name="CoolingPercent">Cooling [%].</param>
public sealed record MarginPractice(
    Figure FreePercent, Figure AlikePercent, Figure OtherShapePercent, Figure FarPercent, Figure LossPercent, Figure LossAbovePercent, Figure OtherwisePercent, Figure CoolingPercent);
