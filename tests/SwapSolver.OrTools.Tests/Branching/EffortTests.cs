using SwapSolver.OrTools.Branching;
using SwapSolver.Solving.Models;
using Xunit.Abstractions;

namespace SwapSolver.OrTools.Tests.Branching;

/// <summary>What choosing well saves: the rules by which the tree cuts and the simplex steps change no answer, only how long it takes.
/// Parts and steps are counted, not timed, and the same programs take the same on every machine; no change of the pantry touches them.
/// Who changes a rule on purpose measures anew, and sets the counts down with the reason.</summary>
public sealed class EffortTests(ITestOutputHelper output)
{
    private const int Bowls = 100;

    /// <summary>How many of them another solver takes a second for.</summary>
    private const int ByAnother = 12;

    private static readonly TimeSpan Ample = TimeSpan.FromSeconds(60);

    [Fact]
    public void Bowls_take_no_more_parts_and_steps_than_when_they_were_counted()
    {
        var (settled, parts, steps) = Count(RandomPrograms.Bowl, Bowls);
        Assert.Equal(Bowls, settled);
        output.WriteLine($"{settled} settled, {parts} parts, {steps} steps");
        Assert.True(parts <= 1_738, $"{parts} parts");
        Assert.True(steps <= 9_561, $"{steps} steps");
    }

    [Fact]
    public void Whole_programs_take_no_more_parts_and_steps_than_when_they_were_counted()
    {
        var (settled, parts, steps) = Count(RandomPrograms.Whole, 500);
        Assert.Equal(500, settled);
        output.WriteLine($"{settled} settled, {parts} parts, {steps} steps");
        Assert.True(parts <= 1_279, $"{parts} parts");
        Assert.True(steps <= 1_719, $"{steps} steps");
    }

    [Fact]
    public void Linear_programs_take_no_more_steps_than_when_they_were_counted()
    {
        var (settled, _, steps) = Count(RandomPrograms.Linear, 500);
        // The others have columns without end, which have no point to begin the dual simplex at; CBC settles them.
        Assert.Equal(463, settled);
        output.WriteLine($"{settled} settled, {steps} steps");
        Assert.True(steps <= 1_428, $"{steps} steps");
    }

    [Fact]
    public void Bowls_end_as_with_another_solver()
    {
        var feasible = 0;
        for (var number = 0; number < ByAnother; number++)
        {
            var model = RandomPrograms.Bowl(number);
            var (ours, other) = (new OrToolsSolver().Solve(model, Ample, CancellationToken.None), new OrToolsSolver(Backend.Cbc).Solve(model, Ample, CancellationToken.None));
            Assert.True(ours.Outcome == other.Outcome, $"{number}: {ours.Outcome}, CBC says {other.Outcome}");
            if (ours.HasPoint)
            {
                feasible++;
                Assert.True(Math.Abs(ours.Objective - other.Objective) <= 1e-5, $"{number}: {ours.Objective}, CBC says {other.Objective}");
                Assert.Null(model.Broken(ours.Values, 1e-7));
            }
        }

        Assert.InRange(feasible, 1, ByAnother - 1);
    }

    private static (int Settled, int Parts, long Steps) Count(Func<int, Model> program, int programs)
    {
        var (settled, parts, steps) = (0, 0, 0L);
        for (var number = 0; number < programs; number++)
        {
            var model = program(number);
            if (Reduction.Of(model) is { } reduced)
            {
                var search = new BranchAndBound(model, reduced, Ample, CancellationToken.None);
                var end = search.Run();
                settled += end?.Outcome is Outcome.Optimal or Outcome.Infeasible ? 1 : 0;
                // Else another solver would be asked, and an error of ours would cost time and never be seen.
                Assert.True(end?.Outcome is not Outcome.Optimal || model.Broken(end.Value.Values, 1e-7) is null, $"{number} breaks its model");
                (parts, steps) = (parts + search.Parts, steps + search.Steps);
            }
        }

        return (settled, parts, steps);
    }
}
