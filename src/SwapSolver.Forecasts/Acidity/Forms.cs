using System.Collections.Immutable;
using SwapSolver.Kitchen.Acids;

namespace SwapSolver.Forecasts;

/// <summary>How a dissociating thing is shared out among its forms at one pH.</summary>
internal static class Forms
{
    private static readonly double LogOfTen = Math.Log(10);

    /// <summary>A power of ten. As one of e it takes less time, and differs in the last digits.</summary>
    public static double TenTo(double exponent) => Math.Exp(exponent * LogOfTen);

    /// <summary>How many forms a thing has.</summary>
    /// <param name="dissociation">The thing.</param>
    public static int CountOf(Dissociation dissociation) => dissociation.Pkas.Length + 1;

    /// <summary>Share of each form, the one with all protons first [1]; they add up to 1.</summary>
    /// <param name="dissociation">The thing.</param>
    /// <param name="ph">pH, which is about activity.</param>
    /// <param name="activity">Activity coefficients.</param>
    /// <param name="ions">Ions that may keep company with a form; what pairs is taken to be little of them.</param>
    /// <param name="shares">Takes them, as many as there are forms.</param>
    public static void Share(Dissociation dissociation, double ph, DaviesActivity activity, ImmutableArray<FreeIon> ions, Span<double> shares)
    {
        var whole = dissociation.ChargeWithAllProtons;
        var (stepped, largest, sum) = (0.0, double.NegativeInfinity, 0.0);
        for (var given = 0; given < shares.Length; given++)
        {
            if (given > 0)
            {
                stepped += ph - dissociation.Pkas[given - 1].Range.Typical;
            }

            var charge = whole - given;
            shares[given] = stepped + activity.Log(whole) - activity.Log(charge);
            if (!dissociation.Pairs.IsEmpty)
            {
                shares[given] += Math.Log10(Company(dissociation, given, charge, activity, ions));
            }

            largest = Math.Max(largest, shares[given]);
        }

        // Logarithms so far, and the largest taken off: a tenth power of a hundred would overflow far from the pKa.
        for (var given = 0; given < shares.Length; given++)
        {
            shares[given] = shares[given] == largest ? 1 : TenTo(shares[given] - largest);
            sum += shares[given];
        }

        for (var given = 0; given < shares.Length; given++)
        {
            shares[given] /= sum;
        }
    }

    /// <summary>Mean charge of the thing [elementary charges]: falls as the pH rises.</summary>
    public static double MeanCharge(Dissociation dissociation, double ph, DaviesActivity activity)
    {
        Span<double> shares = stackalloc double[CountOf(dissociation)];
        Share(dissociation, ph, activity, [], shares);
        var given = 0.0;
        for (var form = 0; form < shares.Length; form++)
        {
            given += shares[form] * form;
        }

        return dissociation.ChargeWithAllProtons - given;
    }

    private static double Company(Dissociation dissociation, int given, int charge, DaviesActivity activity, ImmutableArray<FreeIon> ions)
    {
        var company = 1.0;
        foreach (var pair in dissociation.Pairs)
        {
            if (pair.ProtonsGiven != given)
            {
                continue;
            }

            foreach (var ion in ions)
            {
                if (ion.Ion.Id == pair.Ion.Id)
                {
                    var log = pair.LogConstant.Range.Typical + activity.Log(charge) + activity.Log(ion.Ion.Charge) - activity.Log(charge + ion.Ion.Charge);
                    company += ion.Molality * TenTo(log);
                }
            }
        }

        return company;
    }
}
