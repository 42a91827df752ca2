using System.Collections.Immutable;
using SwapSolver.V1;
using Domain = SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Service.Translation;

/// <summary>A formula as it was read.</summary>
/// <param name="Formula">The formula, every line in grams.</param>
/// <param name="Lines">Its lines, each with what it was read as.</param>
internal sealed record ReadFormula(Domain.Formula Formula, ImmutableArray<ReadLine> Lines)
{
    /// <summary>What the lines were read as that did not give grams.</summary>
    public IEnumerable<ConvertedLine> LinesRead => Lines.Select(line => line.Told).OfType<ConvertedLine>();

    /// <summary>The same formula with its lines in the order of ids; those of one ingredient stay in theirs.</summary>
    public ReadFormula InOrderOfIds()
    {
        var lines = Lines.OrderBy(line => line.Line.Ingredient.Id, StringComparer.Ordinal).ToImmutableArray();
        return new ReadFormula(Formula with { Lines = [.. lines.Select(line => line.Line)] }, lines);
    }

    /// <summary>What those lines may weigh.</summary>
    public Domain.MeasuredLines Measured => Domain.MeasuredLines.Of(Lines.Select(line => (line.Line, line.MayWeigh)));
}
