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
    private readonly double potassium = solution.Ions.Where(static ion => ion.Ion.Id == Potassium).Sum(static ion => ion.Molality);

    private readonly Dissociation? tartaric = solution.Solutes.Select(static solute => solute.Dissociation).FirstOrDefault(static dissociation => dissociation.Id == Tartaric);

    private readonly double tartrate = solution.Solutes.Where(static solute => solute.Dissociation.Id == Tartaric).Sum(static solute => solute.Molality);

    private double[] forms = [];

    /// <summary>The solution at rest.</summary>
    /// <param name="like">A solution that hardly differs, at rest: there it is looked for first. What is found does not hang on it.</param>
    public SolvedSolution Solve(SolvedSolution? like = null) =>
        (like is null ? null : new NearbySolution(Charges, solution.Constants.MostIonicStrengthMolPerKg.Range.Typical).From(like)) ?? Bracketed();

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
        var activity = new DaviesActivity(solution.Constants, ionicStrength);
        var hydrogen = Forms.TenTo(-ph - activity.Log(1));
        var hydroxide = Forms.TenTo(ph - solution.Constants.WaterExponent.Range.Typical - activity.Log(1));
        var sum = hydrogen - hydroxide + solution.BufferSlopeTimesPh - (solution.BufferSlope * ph);
        var squares = hydrogen + hydroxide + (2 * solution.InertSalt);
        var solid = 0.0;
        foreach (var solute in solution.Solutes)
        {
            var shares = SharesOf(solute.Dissociation, ph, activity);
            var fallsOut = potassium > 0 && ReferenceEquals(solute.Dissociation, tartaric);
            solid = fallsOut ? Solid(shares[Bitartrate], activity) : solid;
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
            var shares = SharesOf(gas.Dissociation, ph, activity);
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

    /// <summary>Share of each form; until the next is asked for.</summary>
    private Span<double> SharesOf(Dissociation dissociation, double ph, DaviesActivity activity)
    {
        var count = Forms.CountOf(dissociation);
        if (forms.Length < count)
        {
            forms = new double[count];
        }

        var shares = forms.AsSpan(0, count);
        Forms.Share(dissociation, ph, activity, solution.Ions, shares);
        return shares;
    }

    /// <summary>Potassium bitartrate beyond what dissolves [mol/kg]: so much that the rest is just saturated.</summary>
    /// <param name="share">Share of the tartaric acid that has given one proton.</param>
    /// <param name="activity">Activity coefficients.</param>
    private double Solid(double share, DaviesActivity activity)
    {
        var product = Forms.TenTo(-solution.Constants.BitartrateExponent.Range.Typical - (2 * activity.Log(1))) / share;
        var excess = (potassium * tartrate) - product;
        if (excess <= 0)
        {
            return 0;
        }

        // The smaller root of (potassium - s)(tartrate - s) = product, in the form that keeps its digits.
        var sum = potassium + tartrate;
        return 2 * excess / (sum + Math.Sqrt(((potassium - tartrate) * (potassium - tartrate)) + (4 * product)));
    }
}
