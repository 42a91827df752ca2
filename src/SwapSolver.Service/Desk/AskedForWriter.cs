using SwapSolver.Asking;
using SwapSolver.V1;
using Kind = SwapSolver.V1.AskedFor.Types.Kind;

namespace SwapSolver.Service.Desk;

/// <summary>Writes how a question was understood, and reads one that was asked in fields.</summary>
internal static class AskedForWriter
{
    private const int MostAlsoSwaps = 9;

    /// <summary>What is written.</summary>
    public static AskedFor Write(Understanding told)
    {
        var written = new AskedFor
        {
            Kind = told.Kind switch
            {
                QuestionKind.Variant => Kind.Variant,
                QuestionKind.Replace => Kind.Replace,
                QuestionKind.Check => Kind.Check,
                QuestionKind.Resize => Kind.Resize,
                QuestionKind.Reformulate => Kind.Reformulate,
                QuestionKind.Bake => Kind.Bake,
                QuestionKind.Rise => Kind.Rise,
                QuestionKind.Figures => Kind.Figures,
                QuestionKind.Convert => Kind.Convert,
                _ => Kind.NotUnderstood,
            },
            From = told.From,
            AlsoFrom = told.AlsoFrom,
            To = told.To,
            AlsoTo = told.AlsoTo,
            Diet = told.Diet switch
            {
                "VEGAN" => VaryFormulaRequest.Types.Diet.Vegan,
                "VEGETARIAN" => VaryFormulaRequest.Types.Diet.Vegetarian,
                _ => VaryFormulaRequest.Types.Diet.Unspecified,
            },
            Fan = told.Fan,
            Measure = told.Text,
        };
        written.AlsoSwaps.AddRange(told.AlsoSwaps.Select(swap => new V1.AskedSwap { From = swap.From, To = swap.To }));
        written.Without.AddRange(told.Without.Select(wish => wish.Id));
        written.Targets.AddRange(told.Targets.Select(Write));
        written.Assumed.AddRange(told.Assumed);
        if (told.FromGrams is { } goes)
        {
            written.FromGrams = goes;
        }

        if (told.Slices is { } slices)
        {
            written.Slices = slices;
        }

        if (told.MassGrams is { } mass)
        {
            written.MassGrams = mass;
        }

        if (told.Factor is { } factor)
        {
            written.Factor = factor;
        }

        if (told.OvenCelsius is { } oven)
        {
            written.OvenCelsius = oven;
        }

        if (told.Tin is { } tin)
        {
            written.Tin = new Tin { LengthMm = tin.Length.Value, WidthMm = tin.Width.Value, HeightMm = tin.Height.Value };
        }

        return written;
    }

    /// <summary>A question in fields with its kind: the one that is said, or the one that its fields tell.</summary>
    public static AskedFor WithKind(AskedFor fields)
    {
        var told = new AskedFor(fields);
        told.Assumed.Clear();
        if (told.Kind == Kind.Unspecified)
        {
            told.Kind = told.From.Length > 0 ? (told.To.Length > 0 && told.AlsoTo.Length == 0 ? Kind.Check : Kind.Replace)
                : IsWithout(told) ? Kind.Variant
                : told.HasOvenCelsius ? Kind.Bake
                : IsSized(told) ? Kind.Resize
                : told.Targets.Count > 0 ? Kind.Reformulate
                : told.Measure.Length > 0 ? Kind.Convert
                : Kind.NotUnderstood;
        }

        return told;
    }

    /// <summary>Whether another size is asked for.</summary>
    public static bool IsSized(AskedFor asked) => asked.HasSlices || asked.HasMassGrams || asked.HasFactor || asked.Tin is not null;

    /// <summary>Whether something is to be left out.</summary>
    public static bool IsWithout(AskedFor asked) => asked.Without.Count > 0 || asked.Diet != VaryFormulaRequest.Types.Diet.Unspecified;

    /// <summary>Whether it is asked, and nothing else, if one thing does in the place of two.</summary>
    public static bool IsOneForTwo(AskedFor asked) =>
        asked is { Kind: Kind.Check, From.Length: > 0, AlsoFrom.Length: > 0, To.Length: > 0 } && asked.AlsoFrom != asked.From && asked.AlsoFrom != asked.To
        && !IsSized(asked) && !IsWithout(asked);

    /// <summary>Whether it is asked, and nothing else, if one thing does in the place of a part of another.</summary>
    public static bool IsOfPart(AskedFor asked) =>
        asked is { Kind: Kind.Check, From.Length: > 0, To.Length: > 0, AlsoFrom.Length: 0, AlsoSwaps.Count: 0 } && !IsSized(asked) && !IsWithout(asked);

    /// <summary>Whether it is asked, and nothing else, if several swaps do together.</summary>
    public static bool IsOfSwaps(AskedFor asked) =>
        asked is { Kind: Kind.Check, From.Length: > 0, To.Length: > 0, AlsoFrom.Length: 0, AlsoSwaps.Count: <= MostAlsoSwaps }
        && asked.AlsoSwaps.All(swap => swap.From.Length > 0 && swap.To.Length > 0) && !IsSized(asked) && !IsWithout(asked);

    private static Target Write(AskedTarget target)
    {
        var written = new Target { Name = target.Name };
        if (target.Low is { } low)
        {
            written.Low = low;
        }

        if (target.High is { } high)
        {
            written.High = high;
        }

        return written;
    }
}
