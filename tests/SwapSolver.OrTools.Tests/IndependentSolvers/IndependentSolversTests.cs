using System.Globalization;
using SwapSolver.Loaves.IndependentSolvers;
using SwapSolver.Solving.Models;
using Xunit.Abstractions;

namespace SwapSolver.OrTools.Tests.IndependentSolvers;

/// <summary>Two programs that are not ours solve the same questions from the written text of the model.</summary>
public sealed class IndependentSolversTests(ITestOutputHelper output)
{
    /// <summary>How far two proven optima may lie apart, relative to the larger or to 1: solvers hold rows to 1e-6 or 1e-7.</summary>
    private const double Tolerance = 1e-6;

    [Fact]
    public void Two_independent_programs_find_the_same_optimum_or_none_either()
    {
        var cases = Case.All.ToList();
        Assert.True(cases.Count >= 60, $"{cases.Count} questions are too few");
        var folder = Directory.CreateTempSubdirectory("swapsolver-mps-");
        try
        {
            var compared = new Comparison[cases.Count];
            Parallel.For(0, cases.Count, new ParallelOptions { MaxDegreeOfParallelism = 2 }, index =>
                compared[index] = Compare(cases[index], Path.Combine(folder.FullName, $"{index}.mps")));
            Report(compared);
            Assert.Empty(compared.Where(one => one.Gap > Tolerance).Select(one => one.ToString()));
            Assert.Contains(compared, one => one.Ours.IsFeasible);
            Assert.Contains(compared, one => !one.Ours.IsFeasible);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static Comparison Compare(Case question, string mpsFile)
    {
        var solution = new OrToolsSolver().Solve(question.Model, TimeSpan.FromSeconds(60), CancellationToken.None);
        Assert.True(solution.Outcome is Outcome.Optimal or Outcome.Infeasible, $"{question.Name}: {solution.Outcome}");
        var ours = solution.HasPoint ? new Verdict(true, solution.Objective) : Verdict.Infeasible;
        var glpsol = Glpsol.Judge(question.Model, mpsFile);
        Assert.True(glpsol is not null, $"{question.Name}: glpsol's choices have no point once they are whole");
        return new Comparison(question.Name, ours, glpsol, CbcProgram.Judge(question.Model, mpsFile));
    }

    private void Report(Comparison[] compared)
    {
        var worst = compared.MaxBy(one => one.Gap)!;
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{compared.Length} questions, {compared.Count(one => one.Ours.IsFeasible)} with an answer and {compared.Count(one => !one.Ours.IsFeasible)} without; each by glpsol and by cbc"));
        output.WriteLine($"widest apart: {worst}");
    }

    private sealed record Comparison(string Name, Verdict Ours, Verdict Glpsol, Verdict Cbc)
    {
        /// <summary>Widest relative distance between ours and theirs; endless where one has an answer and the other none.</summary>
        public double Gap => Math.Max(Ours.Apart(Glpsol), Ours.Apart(Cbc));

        public override string ToString() => string.Create(
            CultureInfo.InvariantCulture,
            $"{Name}: ours {Ours.Objective:R}, glpsol {Glpsol.Objective:R}, cbc {Cbc.Objective:R}, apart {Gap:G3}");
    }
}
