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

    /// <summary>How much there is of each form beside the others where the pH is 0, the one with all protons first.</summary>
    /// <param name="dissociation">The thing.</param>
    /// <param name="activity">Activity coefficients.</param>
    /// <param name="ions">Ions that may keep company with a form; what pairs is taken to be little of them.</param>
    /// <param name="weights">Takes them, as many as there are forms.</param>
    public static void Weigh(Dissociation dissociation, DaviesActivity activity, ImmutableArray<FreeIon> ions, Span<double> weights)
    {
        var whole = dissociation.ChargeWithAllProtons;
        var stepped = 0.0;
        for (var given = 0; given < weights.Length; given++)
        {
            if (given > 0)
            {
                stepped += dissociation.Pkas[given - 1].Range.Typical;
            }

            var charge = whole - given;
            weights[given] = TenTo(activity.Log(whole) - activity.Log(charge) - stepped);
            if (!dissociation.Pairs.IsEmpty)
            {
                weights[given] *= Company(dissociation, given, charge, activity, ions);
            }
        }
    }

    /// <summary>Share of each form [1]; they add up to 1. With no more protons than <see cref="Dissociation.MostSteps"/> there is no power that a
    /// number could not hold.</summary>
    /// <param name="weights">As <see cref="Weigh"/> gives them; they may stand where the shares are put.</param>
    /// <param name="tenToPh">Ten to the power of the pH, which is about activity.</param>
    /// <param name="shares">Takes them, as many as there are forms.</param>
    public static void Share(ReadOnlySpan<double> weights, double tenToPh, Span<double> shares)
    {
        var (power, sum) = (1.0, 0.0);
        for (var given = 0; given < shares.Length; given++)
        {
            shares[given] = weights[given] * power;
            sum += shares[given];
            power *= tenToPh;
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
        Weigh(dissociation, activity, [], shares);
        Share(shares, TenTo(ph), shares);
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
