using System.Numerics;
using System.Runtime.InteropServices;

namespace SwapSolver.OrTools.Branching;

/// <summary>The rows of a reduced model, written by the unknowns that stand at a limit: <c>basic = entries x resting</c>. Dense, since
/// a kitchen's hundred rows fit a processor's cache, and each step is then a few thousand additions side by side. They are done
/// number by number, never summed across, so every machine gets the same bits.</summary>
internal sealed class Tableau
{
    /// <summary>Smaller entries are the last digits of what cancelled, and are taken for nothing.</summary>
    private const double Dust = 1e-12;

    /// <summary>Unknowns that give no larger entry than this are no tableau of the model.</summary>
    private const double LeastPivot = 1e-9;

    private readonly ReducedModel model;
    private readonly double[] entries;
    private readonly double[] costs;

    /// <summary>Begins with all columns at rest.</summary>
    public Tableau(ReducedModel model)
    {
        this.model = model;
        entries = new double[model.Dense.Length];
        costs = new double[model.Costs.Length];
        Basic = new int[model.Rows];
        Resting = new int[model.Columns];
        Weights = new double[model.Rows];
        Begin();
    }

    /// <summary>The unknown that each row gives.</summary>
    public int[] Basic { get; }

    /// <summary>The unknowns at rest, in the order of the entries of a row.</summary>
    public int[] Resting { get; }

    /// <summary>What a unit of each unknown at rest costs.</summary>
    public ReadOnlySpan<double> Costs => costs;

    /// <summary>How far a step in each row is likely to lead, against the others (dual Devex; Forrest and Goldfarb 1992).</summary>
    public double[] Weights { get; }

    /// <summary>Steps since the entries were last computed from the model.</summary>
    public int Steps { get; private set; }

    /// <summary>The entries of a row.</summary>
    public ReadOnlySpan<double> Row(int row) => entries.AsSpan(row * model.Width, model.Width);

    /// <summary>An entry.</summary>
    public double this[int row, int place] => entries[(row * model.Width) + place];

    /// <summary>Takes over another tableau of the same model.</summary>
    public void CopyFrom(Tableau other)
    {
        other.entries.CopyTo(entries, 0);
        other.costs.CopyTo(costs, 0);
        other.Basic.CopyTo(Basic, 0);
        other.Resting.CopyTo(Resting, 0);
        other.Weights.CopyTo(Weights, 0);
        Steps = other.Steps;
    }

    /// <summary>The unknown of a row goes to rest, and one at rest takes its place.</summary>
    public void Exchange(int row, int place)
    {
        var width = model.Width;
        var source = entries.AsSpan(row * width, width);
        var pivot = source[place];
        var inverse = 1 / pivot;
        for (var column = 0; column < width; column++)
        {
            source[column] *= -inverse;
        }

        source[place] = inverse;
        var steps = MemoryMarshal.Cast<double, Vector<double>>(source);
        for (var other = 0; other < model.Rows; other++)
        {
            if (other != row)
            {
                Add(entries.AsSpan(other * width, width), place, steps);
            }
        }

        Add(costs, place, steps);
        (Basic[row], Resting[place]) = (Resting[place], Basic[row]);
        Steps++;
    }

    /// <summary>Computes the entries from the model anew, with the same unknowns at rest. False where the model has no such
    /// tableau, to the last digits.</summary>
    public bool TryRenew()
    {
        var wanted = new bool[model.Columns + model.Rows];
        foreach (var unknown in Basic)
        {
            wanted[unknown] = true;
        }

        Begin();
        for (var place = 0; place < model.Columns; place++)
        {
            if (!wanted[place])
            {
                continue;
            }

            var choice = -1;
            for (var row = 0; row < model.Rows; row++)
            {
                if (!wanted[Basic[row]] && (choice < 0 || Math.Abs(this[row, place]) > Math.Abs(this[choice, place])))
                {
                    choice = row;
                }
            }

            if (choice < 0 || Math.Abs(this[choice, place]) < LeastPivot)
            {
                return false;
            }

            Exchange(choice, place);
        }

        Steps = 0;
        return true;
    }

    /// <summary>All columns at rest.</summary>
    public void Begin()
    {
        model.Dense.CopyTo(entries, 0);
        model.Costs.CopyTo(costs, 0);
        for (var row = 0; row < model.Rows; row++)
        {
            Basic[row] = model.Columns + row;
        }

        for (var place = 0; place < model.Columns; place++)
        {
            Resting[place] = place;
        }

        Array.Fill(Weights, 1);
        Steps = 0;
    }

    private static void Add(Span<double> target, int place, ReadOnlySpan<Vector<double>> steps)
    {
        var factor = target[place];
        target[place] = 0;
        if (Math.Abs(factor) <= Dust)
        {
            return;
        }

        var factors = new Vector<double>(factor);
        var sums = MemoryMarshal.Cast<double, Vector<double>>(target);
        for (var index = 0; index < sums.Length; index++)
        {
            sums[index] += factors * steps[index];
        }
    }
}
