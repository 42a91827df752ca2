using System.Numerics;

namespace SwapSolver.Loaves.Exact;

/// <summary>A fraction of whole numbers: nothing is rounded in it, so what it says of a sum is true of the sum.</summary>
public readonly struct Rational : IComparable<Rational>, IEquatable<Rational>
{
    private const int MantissaBits = 52;

    private const int ExponentBias = 1075;

    private readonly BigInteger bottomLessOne;

    private Rational(BigInteger top, BigInteger bottom)
    {
        var common = BigInteger.GreatestCommonDivisor(top, bottom) * bottom.Sign;
        Top = top / common;
        bottomLessOne = (bottom / common) - 1;
    }

    /// <summary>Above the line, with the sign.</summary>
    public BigInteger Top { get; }

    /// <summary>Below the line; 1 or more, with no factor of <see cref="Top"/>.</summary>
    public BigInteger Bottom => bottomLessOne + 1;

    /// <summary>The very number that a double holds.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is no finite number.</exception>
    public static Rational Of(double value)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "no finite number");
        }

        var bits = BitConverter.DoubleToInt64Bits(value);
        var exponent = (int)((bits >> MantissaBits) & 0x7FF);
        var mantissa = bits & ((1L << MantissaBits) - 1);
        mantissa = exponent == 0 ? mantissa : mantissa | (1L << MantissaBits);
        var power = Math.Max(exponent, 1) - ExponentBias;
        BigInteger top = bits < 0 ? -mantissa : mantissa;
        return power >= 0 ? new Rational(top << power, 1) : new Rational(top, BigInteger.One << -power);
    }

    /// <summary>The number that a decimal figure says.</summary>
    public static Rational Of(decimal value)
    {
        var bits = decimal.GetBits(value);
        var scale = (bits[3] >> 16) & 0xFF;
        var power = BigInteger.Pow(10, scale);
        // Times its power of ten in whole numbers: a product of decimals might be rounded.
        var whole = new BigInteger((uint)bits[0]) + (new BigInteger((uint)bits[1]) << 32) + (new BigInteger((uint)bits[2]) << 64);
        return new Rational(value < 0 ? -whole : whole, power);
    }

    /// <summary>A quotient of two whole numbers.</summary>
    /// <exception cref="DivideByZeroException">The lower one is zero.</exception>
    public static Rational Of(BigInteger top, BigInteger bottom) =>
        bottom.IsZero ? throw new DivideByZeroException() : new Rational(top, bottom);

    /// <summary>A whole number.</summary>
    public static implicit operator Rational(int value) => new(value, 1);

    /// <summary>The sum.</summary>
    public static Rational operator +(Rational left, Rational right) =>
        new((left.Top * right.Bottom) + (right.Top * left.Bottom), left.Bottom * right.Bottom);

    /// <summary>The difference.</summary>
    public static Rational operator -(Rational left, Rational right) =>
        new((left.Top * right.Bottom) - (right.Top * left.Bottom), left.Bottom * right.Bottom);

    /// <summary>The product.</summary>
    public static Rational operator *(Rational left, Rational right) => new(left.Top * right.Top, left.Bottom * right.Bottom);

    /// <summary>The quotient.</summary>
    /// <exception cref="DivideByZeroException">The right one is zero.</exception>
    public static Rational operator /(Rational left, Rational right) => Of(left.Top * right.Bottom, left.Bottom * right.Top);

    /// <summary>Whether the left one is the smaller.</summary>
    public static bool operator <(Rational left, Rational right) => left.CompareTo(right) < 0;

    /// <summary>Whether the left one is the larger.</summary>
    public static bool operator >(Rational left, Rational right) => left.CompareTo(right) > 0;

    /// <summary>Whether the left one is not the larger.</summary>
    public static bool operator <=(Rational left, Rational right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the left one is not the smaller.</summary>
    public static bool operator >=(Rational left, Rational right) => left.CompareTo(right) >= 0;

    /// <summary>Whether they are the same number.</summary>
    public static bool operator ==(Rational left, Rational right) => left.Equals(right);

    /// <summary>Whether they are different numbers.</summary>
    public static bool operator !=(Rational left, Rational right) => !left.Equals(right);

    /// <summary>The larger of two.</summary>
    public static Rational Max(Rational left, Rational right) => left >= right ? left : right;

    /// <summary>The smaller of two.</summary>
    public static Rational Min(Rational left, Rational right) => left <= right ? left : right;

    /// <summary>Whether it is a whole number.</summary>
    public bool IsWhole => bottomLessOne.IsZero;

    /// <summary>The number without its sign.</summary>
    public Rational Size => new(BigInteger.Abs(Top), Bottom);

    /// <summary>About the same number, to be printed.</summary>
    public double Nearly => Math.Exp(BigInteger.Log(BigInteger.Abs(Top)) - BigInteger.Log(Bottom)) * Top.Sign;

    /// <inheritdoc/>
    public int CompareTo(Rational other) => (Top * other.Bottom).CompareTo(other.Top * Bottom);

    /// <inheritdoc/>
    public bool Equals(Rational other) => Top == other.Top && bottomLessOne == other.bottomLessOne;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Rational other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Top, bottomLessOne);

    /// <inheritdoc/>
    public override string ToString() => $"{Top}/{Bottom}";
}
