namespace SwapSolver.Kitchen.Panels;

/// <summary>How a line of a panel is called.</summary>
/// <param name="Id">Its key in data and requests, as <c>saturatedFat</c>.</param>
/// <param name="Name">Its name on the packet, as <c>saturates</c>.</param>
/// <param name="Unit">Unit of its figures.</param>
public sealed record LineWords(string Id, string Name, string Unit);
