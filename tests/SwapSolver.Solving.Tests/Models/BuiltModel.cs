using SwapSolver.Solving.Models;

namespace SwapSolver.Solving.Tests.Models;

/// <summary>A model whose columns and rows are found by their names.</summary>
internal sealed class BuiltModel(FormulaProblem problem, bool wholeSteps = false)
{
    /// <summary>The model with its lines.</summary>
    public FormulaModel Whole { get; } = FormulaModel.Build(problem, wholeSteps);

    /// <summary>The column of a name.</summary>
    public Column Column(string name) => Whole.Model.Columns.Single(column => column.Name == name);

    /// <summary>Whether there is a column of a name.</summary>
    public bool HasColumn(string name) => Whole.Model.Columns.Any(column => column.Name == name);

    /// <summary>The rows of a name, behind which a running number stands.</summary>
    public IReadOnlyList<ModelRow> Rows(string name) => [.. Whole.Model.Rows.Where(row => row.Name[..row.Name.LastIndexOf('_')] == name)];

    /// <summary>The one row of a name.</summary>
    public ModelRow Row(string name) => Assert.Single(Rows(name));

    /// <summary>What a unit of a column adds to a row.</summary>
    public double Coefficient(string row, string column) =>
        Row(row).Terms.Where(term => Whole.Model.Columns[term.Column].Name == column).Sum(term => term.Coefficient);

    /// <summary>The line of an ingredient.</summary>
    public LineColumn Line(string id) => Whole.Lines.Single(line => line.Ingredient.Id == id);
}
