using SwapSolver.Kitchen.Panels;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Solving.Panels;

/// <summary>A printed figure that cannot be true together with others.</summary>
/// <param name="Line">The line; null for the weight of the serving.</param>
/// <param name="Words">The figure as printed with its name and unit, as "fat 30 g".</param>
/// <param name="Interval">What it may stand for for one serving, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Unit of the figure.</param>
public sealed record ClashingFigure(PanelLine? Line, string Words, Range Interval, string Unit);
