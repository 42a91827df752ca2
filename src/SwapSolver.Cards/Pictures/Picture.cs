using System.Collections.Immutable;
using System.Xml.Linq;

namespace SwapSolver.Cards.Pictures;

/// <summary>A picture with the table that says the same in figures.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="Drawing">The picture in SVG; none of it is told by colour alone.</param>
/// <param name="Columns">Heads of the table.</param>
/// <param name="Rows">Its rows.</param>
internal sealed record Picture(string Title, XElement Drawing, ImmutableArray<string> Columns, ImmutableArray<ImmutableArray<string>> Rows);
