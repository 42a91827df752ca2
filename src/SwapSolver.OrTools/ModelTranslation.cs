using Google.OrTools.LinearSolver;
using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools;

/// <summary>Writes a model into a native solver.</summary>
internal static class ModelTranslation
{
    /// <summary>Writes columns, rows and objective. No names: two alike would crash a look-up.</summary>
    /// <param name="model">The model.</param>
    /// <param name="solver">What it is written into.</param>
    /// <param name="costFactor">What every cost is multiplied by, which moves no optimum [1].</param>
    public static (Variable[] Variables, Constraint[] Constraints) Write(Model model, Solver solver, double costFactor = 1)
    {
        Variable[] variables =
        [
            .. model.Columns.Select(column => solver.MakeVar(column.Low, column.High, column.IsWhole, string.Empty)),
        ];
        var constraints = new Constraint[model.Rows.Count];
        for (var index = 0; index < constraints.Length; index++)
        {
            var row = model.Rows[index];
            var constraint = constraints[index] = solver.MakeConstraint(row.Low, row.High, string.Empty);
            foreach (var term in row.Terms)
            {
                constraint.SetCoefficient(variables[term.Column], term.Coefficient);
            }
        }

        var objective = solver.Objective();
        objective.SetMinimization();
        for (var column = 0; column < variables.Length; column++)
        {
            if (model.Columns[column].Cost != 0)
            {
                objective.SetCoefficient(variables[column], model.Columns[column].Cost * costFactor);
            }
        }

        return (variables, constraints);
    }
}
