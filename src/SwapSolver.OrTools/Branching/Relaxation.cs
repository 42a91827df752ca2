using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools.Branching;

/// <summary>A model whose whole columns may take parts, within limits that can be set anew. Each solve starts from where the
/// last one ended, which is what makes a tree of them quick.</summary>
internal sealed class Relaxation
{
    private readonly Model model;
    private readonly ReducedModel reduced;
    private readonly DualSimplex simplex;
    private readonly Tableau root;

    /// <summary>Begins with the limits of the model.</summary>
    public Relaxation(Model model, ReducedModel reduced, CancellationToken cancel)
    {
        this.model = model;
        this.reduced = reduced;
        simplex = new DualSimplex(reduced, cancel);
        root = new Tableau(reduced);
        Values = new double[reduced.Columns];
    }

    /// <summary>The columns that are to be whole.</summary>
    public IReadOnlyList<int> Whole => reduced.Whole;

    /// <summary>Lower limits; those of whole columns may be changed between solves.</summary>
    public double[] Low => simplex.Low;

    /// <summary>Upper limits, likewise.</summary>
    public double[] High => simplex.High;

    /// <summary>The columns at the point that the last solve found.</summary>
    public double[] Values { get; }

    /// <summary>What that point costs.</summary>
    public double Cost
    {
        get
        {
            var sum = reduced.Constant;
            for (var column = 0; column < Values.Length; column++)
            {
                sum += reduced.Costs[column] * Values[column];
            }

            return sum;
        }
    }

    /// <summary>No point within the limits of the last solve costs less: proven.</summary>
    public double Bound => simplex.Bound;

    /// <summary>What a unit of each column costs at the last point, beyond what it saves.</summary>
    public ReadOnlySpan<double> ReducedCosts => simplex.ReducedCosts;

    /// <summary>Steps that they took.</summary>
    public long Steps => simplex.Steps;

    /// <summary>Solves within the limits as they stand.</summary>
    /// <param name="worth">What a point must cost less than to be worth finding.</param>
    public LinearOutcome Solve(double worth)
    {
        foreach (var column in Whole)
        {
            if (Low[column] > High[column])
            {
                return LinearOutcome.Nothing;
            }
        }

        var outcome = simplex.Solve(worth);
        if (outcome == LinearOutcome.Best)
        {
            for (var column = 0; column < Values.Length; column++)
            {
                // A limit passed in the last digits would be cut at again and again.
                Values[column] = Math.Clamp(simplex.Values[column], Low[column], High[column]);
            }
        }

        return outcome;
    }

    /// <summary>Keeps where it stands, with fresh digits, as the place that every other part is begun from.</summary>
    public void KeepRoot()
    {
        simplex.Tableau.TryRenew();
        root.CopyFrom(simplex.Tableau);
    }

    /// <summary>Goes back to the root, which costs a few steps more than to go on from afar, and loses no digits.</summary>
    public void GoToRoot() => simplex.Tableau.CopyFrom(root);

    /// <summary>The point that the last solve found, in the model's own columns.</summary>
    public double[] Point() => reduced.Restoring.Values(model, Values);
}
