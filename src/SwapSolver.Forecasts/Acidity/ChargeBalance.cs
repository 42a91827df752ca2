using System.Collections.Immutable;
using MathNet.Numerics.RootFinding;
using SwapSolver.Kitchen.Acids;

namespace SwapSolver.Forecasts;

/// <summary>
/// Finds the pH at which the charges of a solution cancel. At a given ionic strength the charge only falls as the pH
/// rises, so there is one such pH; the ionic strength is found about it, between none and the most that the activity
/// equation bears, where a root always lies.
/// </summary>
/// <param name="solution">What is dissolved.</param>
internal sealed class ChargeBalance(Solution solution)
{
    /// <summary>Ends between which every pH of a kitchen lies: 100 mol/kg of strong acid or base.</summary>
    private const double LeastPh = -2, MostPh = 16;

    /// <summary>How near a root is told [pH, mol/kg].</summary>
    private const double Accuracy = 1e-13;

    /// <summary>How far the pH moves from one ionic strength to another: as a rule, and at the most as a rule [pH].</summary>
    private static readonly ImmutableArray<double> Nearby = [0.03, 0.3];

    private const int MostSteps = 500;

    private const string Tartaric = "tartaric", Potassium = "potassium";

    /// <summary>The form of tartaric acid that cream of tartar is made of: one proton given.</summary>
    private const int Bitartrate = 1;

    // Of one solution, and asked for at every pH that is tried.
    private readonly double potassium = PotassiumOf(solution);

    private readonly (Dissociation? Of, double Molality) tartrate = TartrateOf(solution);

    private readonly double ionProduct = Forms.TenTo(-solution.Constants.WaterExponent.Range.Typical);

    // By solute and form, carbon dioxide last.
    private readonly double[] weights = new double[FormsOf(solution)];

    // Of one thing at a time; none has more forms than all together.
    private readonly double[] forms = new double[FormsOf(solution)];

    private double weighedAt = double.NaN;

    /// <summary>Activity coefficient of an ion of one charge [1].</summary>
    private double ofOneCharge;

    /// <summary>The solution at rest.</summary>
    /// <param name="like">A solution that hardly differs, at rest: there it is looked for first. What is found does not hang on it.</param>
    public SolvedSolution Solve(SolvedSolution? like = null) =>
        (like is null ? null : new NearbySolution(Charges, solution.Constants.MostIonicStrengthMolPerKg.Range.Typical).From(like)) ?? Bracketed();

    /// <summary>The charge left over away from rest [mol/kg].</summary>
    /// <param name="ph">The pH.</param>
    /// <param name="ionicStrength">The ionic strength, from none to the most that the activity equation bears [mol/kg].</param>
    public double ChargeAt(double ph, double ionicStrength) => Charges(ph, ionicStrength).Sum;

    private SolvedSolution Bracketed()
    {
        var most = solution.Constants.MostIonicStrengthMolPerKg.Range.Typical;
        double? near = null;
        double Excess(double ionicStrength)
        {
            near = PhAt(ionicStrength, near);
            return Math.Min(Charges(near.Value, ionicStrength).IonicStrength, most) - ionicStrength;
        }

        (double At, double Value) At(double ionicStrength) => (ionicStrength, Excess(ionicStrength));
        var found = At(most) is { Value: < 0 } atMost ? Root(Excess, At(0), atMost) : most;
        var ph = PhAt(found, near);
        var charges = Charges(ph, found);
        return new SolvedSolution(ph, found, charges.Sum, charges.SolidBitartrate);
    }

    /// <summary>The pH at an ionic strength. At another it hardly lies elsewhere, so it is looked for there first.</summary>
    private double PhAt(double ionicStrength, double? near)
    {
        double Sum(double ph) => Charges(ph, ionicStrength).Sum;
        (double, double Value) At(double ph) => (ph, Sum(ph));
        if (near is { } there)
        {
            foreach (var far in Nearby)
            {
                if (At(there - far) is { Value: > 0 } below && At(there + far) is { Value: < 0 } above)
                {
                    return Root(Sum, below, above);
                }
            }
        }

        return Root(Sum, At(LeastPh), At(MostPh));
    }

    /// <summary>The root between two ends; the end that is nearer to it where both have one sign.</summary>
    private static double Root(Func<double, double> function, (double At, double Value) low, (double At, double Value) high)
    {
        if (low.Value == 0 || high.Value == 0 || Math.Sign(low.Value) == Math.Sign(high.Value))
        {
            return Math.Abs(low.Value) <= Math.Abs(high.Value) ? low.At : high.At;
        }

        // Whoever looks for the root asks for both ends once more.
        double Known(double at) => at == low.At ? low.Value : at == high.At ? high.Value : function(at);
        return Brent.TryFindRoot(Known, low.At, high.At, Accuracy, MostSteps, out var root)
            ? root
            : throw new InvalidOperationException("a bracketed root was not found, which bisection alone would have found");
    }

    private (double Sum, double IonicStrength, double SolidBitartrate) Charges(double ph, double ionicStrength)
    {
        if (ionicStrength != weighedAt)
        {
            Weigh(ionicStrength);
        }

        var tenToPh = Forms.TenTo(ph);
        var hydrogen = 1 / (tenToPh * ofOneCharge);
        var hydroxide = tenToPh * ionProduct / ofOneCharge;
        var sum = hydrogen - hydroxide + solution.BufferSlopeTimesPh - (solution.BufferSlope * ph);
        var squares = hydrogen + hydroxide + (2 * solution.InertSalt);
        var (solid, at) = (0.0, 0);
        foreach (var solute in solution.Solutes)
        {
            var shares = NextShares(solute.Dissociation, tenToPh, ref at);
            var fallsOut = potassium > 0 && ReferenceEquals(solute.Dissociation, tartrate.Of);
            solid = fallsOut ? Solid(shares[Bitartrate]) : solid;
            Add(solute.Dissociation.ChargeWithAllProtons, shares, solute.Molality - (fallsOut ? solid : 0));
        }

        foreach (var ion in solution.Ions)
        {
            var molality = ion.Molality - (ion.Ion.Id == Potassium ? solid : 0);
            sum += ion.Ion.Charge * molality;
            squares += ion.Ion.Charge * ion.Ion.Charge * molality;
        }

        if (solution.CarbonDioxide is { } gas)
        {
            var shares = NextShares(gas.Dissociation, tenToPh, ref at);
            var perAtm = solution.Constants.CarbonDioxideMolPerKgAtm.Range.Typical / shares[0];
            Add(gas.Dissociation.ChargeWithAllProtons, shares, gas.InWater(perAtm));
        }

        return (sum, squares / 2, solid);

        void Add(int whole, ReadOnlySpan<double> shares, double molality)
        {
            for (var given = 0; given < shares.Length; given++)
            {
                var charge = whole - given;
                sum += charge * shares[given] * molality;
                squares += charge * charge * shares[given] * molality;
            }
        }
    }

    private static double PotassiumOf(Solution solution)
    {
        var sum = 0.0;
        foreach (var ion in solution.Ions)
        {
            sum += ion.Ion.Id == Potassium ? ion.Molality : 0;
        }

        return sum;
    }

    private static (Dissociation? Of, double Molality) TartrateOf(Solution solution)
    {
        var (of, sum) = ((Dissociation?)null, 0.0);
        foreach (var solute in solution.Solutes)
        {
            if (solute.Dissociation.Id == Tartaric)
            {
                (of, sum) = (of ?? solute.Dissociation, sum + solute.Molality);
            }
        }

        return (of, sum);
    }

    /// <summary>Works out what hangs on the ionic strength alone: a pH is looked for at one of them for many steps.</summary>
    private void Weigh(double ionicStrength)
    {
        var activity = new DaviesActivity(solution.Constants, ionicStrength);
        (weighedAt, ofOneCharge) = (ionicStrength, Forms.TenTo(activity.Log(1)));
        var at = 0;
        foreach (var solute in solution.Solutes)
        {
            WeighNext(solute.Dissociation, activity, ref at);
        }

        if (solution.CarbonDioxide is { } gas)
        {
            WeighNext(gas.Dissociation, activity, ref at);
        }
    }

    private void WeighNext(Dissociation dissociation, DaviesActivity activity, ref int at)
    {
        var count = Forms.CountOf(dissociation);
        Forms.Weigh(dissociation, activity, solution.Ions, weights.AsSpan(at, count));
        at += count;
    }

    /// <summary>Share of each form; until the next is asked for.</summary>
    private ReadOnlySpan<double> NextShares(Dissociation dissociation, double tenToPh, ref int at)
    {
        var count = Forms.CountOf(dissociation);
        var shares = forms.AsSpan(0, count);
        Forms.Share(weights.AsSpan(at, count), tenToPh, shares);
        at += count;
        return shares;
    }

    private static int FormsOf(Solution solution)
    {
        var count = solution.CarbonDioxide is { } gas ? Forms.CountOf(gas.Dissociation) : 0;
        foreach (var solute in solution.Solutes)
        {
            count += Forms.CountOf(solute.Dissociation);
        }

        return count;
    }

    /// <summary>Potassium bitartrate beyond what dissolves [mol/kg]: so much that the rest is just saturated.</summary>
    /// <param name="share">Share of the tartaric acid that has given one proton.</param>
    private double Solid(double share)
    {
        var product = Forms.TenTo(-solution.Constants.BitartrateExponent.Range.Typical) / (ofOneCharge * ofOneCharge * share);
        var most = tartrate.Molality;
        var excess = (potassium * most) - product;
        if (excess <= 0)
        {
            return 0;
        }

        // The smaller root of (potassium - s)(tartrate - s) = product, in the form that keeps its digits.
        var sum = potassium + most;
        return 2 * excess / (sum + Math.Sqrt(((potassium - most) * (potassium - most)) + (4 * product)));
    }
}
