using SwapSolver.Kitchen.Balances;
using SwapSolver.Service.Faults;
using SwapSolver.V1;
using Kind = SwapSolver.V1.AskedFor.Types.Kind;

namespace SwapSolver.Service.Desk;

/// <summary>Which fields of a question go together.</summary>
internal static class AskedFields
{
    /// <summary>Adds a problem for each that does not.</summary>
    /// <param name="fields">The question in fields.</param>
    /// <param name="problems">The problems.</param>
    public static void Check(AskedFor fields, ProblemList problems)
    {
        var asked = AskedForWriter.WithKind(fields);
        if (fields.AlsoFrom.Length > 0 && !AskedForWriter.IsOneForTwo(asked))
        {
            problems.Add("fields.also_from", fields.AlsoFrom, "goes out beside 'from' only where it is asked whether one thing does for two", "give 'from' and 'to' with it, and no size, diet or 'without'");
        }

        if (fields.Kind == Kind.Figures && (fields.From.Length > 0 || fields.Targets.Count > 0 || fields.HasMassGrams || fields.HasFactor || fields.Tin is not null || AskedForWriter.IsWithout(fields)))
        {
            problems.Add("fields.kind", "FIGURES", "tells what a slice of the formula has as it stands, or cut into other slices", "leave the other fields away but 'slices', and ask about what comes of them by itself");
        }

        if (asked.Kind is Kind.Bake or Kind.Convert or Kind.Rise or Kind.Figures
            && fields.Targets.FirstOrDefault(target => target.Name.StartsWith(LineMass.Prefix, StringComparison.Ordinal)) is { } line)
        {
            problems.Add("fields.targets", line.Name, "has no use beside what is asked", "ask for it by itself, or beside a size, a swap, a diet or what is left out");
        }

        if (fields.AlsoTo.Length > 0 && asked is not { Kind: Kind.Replace, From.Length: > 0, To.Length: > 0 })
        {
            problems.Add("fields.also_to", fields.AlsoTo, "comes in beside 'to' only where something is replaced", "give 'from' and 'to' with it, and a kind of REPLACE");
        }

        if (fields.HasFromGrams && !AskedForWriter.IsOfPart(asked))
        {
            problems.Add("fields.from_grams", fields.FromGrams, "goes out in part only where one swap is checked", "give 'from' and 'to' with it, a kind of CHECK, and no size, diet, 'also_from', 'also_swaps' or 'without'");
        }

        if (fields.AlsoSwaps.Count > 0 && !AskedForWriter.IsOfSwaps(asked))
        {
            problems.Add("fields.also_swaps", fields.AlsoSwaps.Count, "swaps are asked about only beside a 'from' and a 'to', with a kind of CHECK", "give up to 9, each with 'from' and 'to', no other kind, and no size, diet, 'also_from' or 'without'");
        }
    }
}
