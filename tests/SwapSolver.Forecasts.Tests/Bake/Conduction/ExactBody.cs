using MathNet.Numerics;
using MathNet.Numerics.RootFinding;

namespace SwapSolver.Forecasts.Tests;

/// <summary>The exact history of a slab, a long cylinder or a sphere of one temperature that is put into another, as the
/// series of the textbooks has it: the judge of the finite volumes, held itself by a published table.</summary>
internal sealed class ExactBody
{
    private const int MostTerms = 60;

    private readonly BodyKind kind;
    private readonly double[] roots;

    /// <summary>The body of a Biot number, by half the thickness or by the radius; infinite where the skin is held.</summary>
    public ExactBody(BodyKind kind, double biot)
    {
        this.kind = kind;
        roots = [.. Enumerable.Range(0, MostTerms).Select(term => Root(term, biot))];
    }

    /// <summary>First root of the body's own equation.</summary>
    public double Zeta => roots[0];

    /// <summary>Coefficient of the first term.</summary>
    public double Coefficient => CoefficientOf(Zeta);

    /// <summary>(T - T outside) / (T at the start - T outside) in the middle.</summary>
    /// <param name="fourier">Diffusivity times time by the square of half the thickness or of the radius.</param>
    public double Middle(double fourier) => roots.Sum(root => CoefficientOf(root) * Math.Exp(-root * root * fourier));

    /// <summary>The same by the first term alone.</summary>
    public double MiddleByOneTerm(double fourier) => Coefficient * Math.Exp(-Zeta * Zeta * fourier);

    /// <summary>Fourier number at which the middle has come so near; for products of bodies see <see cref="When"/>.</summary>
    public double FourierAt(double theta) => When(Middle, theta, 10);

    /// <summary>When a falling history passes a value.</summary>
    public static double When(Func<double, double> history, double theta, double latest) =>
        Brent.FindRoot(time => history(time) - theta, 1e-3 * latest, latest, 1e-12);

    private double CoefficientOf(double z) => kind switch
    {
        BodyKind.Slab => 4 * Math.Sin(z) / ((2 * z) + Math.Sin(2 * z)),
        BodyKind.Cylinder => 2 / z * J(1, z) / ((J(0, z) * J(0, z)) + (J(1, z) * J(1, z))),
        _ => 4 * (Math.Sin(z) - (z * Math.Cos(z))) / ((2 * z) - Math.Sin(2 * z)),
    };

    private double Root(int term, double biot)
    {
        // Each equation has one root between neighbouring poles; written without its poles it changes sign there once.
        double Of(double z) => kind switch
        {
            BodyKind.Slab => double.IsInfinity(biot) ? Math.Cos(z) : (z * Math.Sin(z)) - (biot * Math.Cos(z)),
            BodyKind.Cylinder => double.IsInfinity(biot) ? J(0, z) : (z * J(1, z)) - (biot * J(0, z)),
            _ => double.IsInfinity(biot) ? Math.Sin(z) : ((1 - biot) * Math.Sin(z)) - (z * Math.Cos(z)),
        };
        var (low, high) = kind switch
        {
            BodyKind.Slab => (term * Math.PI, (term * Math.PI) + (Math.PI / 2)),
            BodyKind.Cylinder => (term == 0 ? 1e-9 : ZeroOfJ1(term), ZeroOfJ0(term)),
            _ => (term * Math.PI, (term + 1) * Math.PI),
        };
        return double.IsInfinity(biot)
            ? high
            : Brent.FindRoot(Of, low + 1e-9, high - 1e-12, 1e-13, 200);
    }

    private static double ZeroOfJ0(int term) => Brent.FindRoot(z => J(0, z), ((term + 0.75) * Math.PI) - 0.5, ((term + 0.75) * Math.PI) + 0.5, 1e-13);

    private static double ZeroOfJ1(int term) => Brent.FindRoot(z => J(1, z), ((term + 0.25) * Math.PI) - 0.5, ((term + 0.25) * Math.PI) + 0.5, 1e-13);

    private static double J(int order, double z) => SpecialFunctions.BesselJ(order, z);
}

/// <summary>A body that heat enters in one direction.</summary>
internal enum BodyKind
{
    /// <summary>Between two planes.</summary>
    Slab,

    /// <summary>A cylinder without ends.</summary>
    Cylinder,

    /// <summary>A ball.</summary>
    Sphere,
}
