namespace SwapSolver.Kitchen.Panels;

/// <summary>A figure that is no figure of a panel.</summary>
/// <param name="Field">Id of the line, as <c>saturatedFat</c>; or <c>serving</c>, or <c>figures</c> for all of them.</param>
/// <param name="Value">What was given.</param>
/// <param name="Reason">Why it cannot be read.</param>
/// <param name="WayOut">What would do.</param>
public sealed record PanelProblem(string Field, string Value, string Reason, string WayOut);
