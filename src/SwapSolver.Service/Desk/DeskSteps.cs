using Grpc.Core;
using SwapSolver.Service.Translation;
using SwapSolver.V1;
using Domain = SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Service.Desk;

/// <summary>The steps that a question is answered in, each a question of the service: another size first, then what is put in
/// another's place, then what is left out.</summary>
/// <param name="calls">The questions of the service.</param>
/// <param name="limits">Targets as limits.</param>
/// <param name="asked">What is asked for.</param>
/// <param name="formula">The formula asked about.</param>
/// <param name="context">The call.</param>
internal sealed class DeskSteps(InnerCalls calls, TargetLimits limits, AskedFor asked, Domain.Formula formula, ServerCallContext context)
{
    /// <summary>Whether another size is asked for.</summary>
    public bool IsSized => AskedForWriter.IsSized(asked);

    /// <summary>Whether something is to be left out.</summary>
    public bool IsWithout => AskedForWriter.IsWithout(asked);

    /// <summary>The formula as it is, cut into other slices where that is asked for.</summary>
    public Formula Cut(Formula given)
    {
        var cut = given.Clone();
        if (asked.HasSlices)
        {
            cut.Slices = asked.Slices;
            if (cut.Shape?.Pieces is { } pieces)
            {
                pieces.Count = asked.Slices;
            }
        }

        return cut;
    }

    /// <summary>The formula in the size that is asked for.</summary>
    /// <param name="given">The formula.</param>
    /// <param name="withLimits">Whether the targets that are asked for limit it.</param>
    /// <param name="weighedEgg">Whether eggs are weighed, and need not come whole.</param>
    public async Task<DeskAnswer> Resize(Formula given, bool withLimits, bool weighedEgg = false)
    {
        var request = new ResizeFormulaRequest { Formula = given, Habits = Habits(withLimits) };
        request.Habits.WeighedEgg = weighedEgg;
        if (asked.Tin is { } tin)
        {
            request.Tin = tin;
        }
        else if (asked.HasMassGrams)
        {
            request.MassGrams = asked.MassGrams;
        }
        else if (asked.HasFactor)
        {
            request.Factor = asked.Factor;
        }

        if (asked.HasSlices)
        {
            request.Slices = asked.Slices;
        }

        var response = await calls.Resize(request, context);
        return DeskAnswer.Of(response.Answers, response.Conflict);
    }

    /// <summary>One thing in another's place, or whatever can stand there.</summary>
    public async Task<DeskAnswer> Replace(Formula given)
    {
        var request = new ReplaceIngredientRequest { Formula = given, Ingredient = Name(asked.From), Habits = Habits(withLimits: true) };
        if (asked.To.Length > 0)
        {
            request.With.Add(Name(asked.To));
        }

        if (asked.AlsoTo.Length > 0)
        {
            request.With.Add(Name(asked.AlsoTo));
        }

        var response = await calls.Replace(request, context);
        return DeskAnswer.Of(response.Answers, response.Conflict);
    }

    /// <summary>Whether one thing does in another's place.</summary>
    public Task<CheckSwapResponse> Check(Formula given)
    {
        var request = new CheckSwapRequest { Formula = given, Swaps = { new Swap { From = Name(asked.From), To = Name(asked.To) } }, Habits = Habits(withLimits: true) };
        if (asked.HasFromGrams)
        {
            request.Swaps[0].FromGrams = asked.FromGrams;
        }

        if (asked.AlsoFrom.Length > 0)
        {
            request.Swaps.Add(new Swap { From = Name(asked.AlsoFrom) });
        }

        request.Swaps.AddRange(asked.AlsoSwaps.Select(swap => new Swap { From = Name(swap.From), To = Name(swap.To) }));
        return calls.Check(request, context);
    }

    /// <summary>The formula without what is to be left out. What went out before does not come back.</summary>
    /// <param name="given">The formula.</param>
    /// <param name="words">The words to leave out.</param>
    public async Task<DeskAnswer> Vary(Formula given, IEnumerable<string> words)
    {
        var request = new VaryFormulaRequest { Formula = given, Diet = asked.Diet, Habits = Habits(withLimits: true) };
        request.Without.AddRange(words);
        if (asked.From.Length > 0)
        {
            request.Without.Add(ResourceName.IngredientId(asked.From));
        }

        if (asked.To.Length > 0)
        {
            request.Habits.Allow.Add(Name(asked.To));
        }

        var response = await calls.Vary(request, context);
        return DeskAnswer.Of(response.Answers, response.Conflict);
    }

    /// <summary>The formula with its readings moved.</summary>
    public async Task<DeskAnswer> Reformulate(Formula given)
    {
        var response = await calls.Reformulate(new ReformulateFormulaRequest { Formula = given, Targets = { asked.Targets } }, context);
        return DeskAnswer.Of(response.Answers, response.Conflict);
    }

    /// <summary>How long a formula bakes, in the oven that is asked about.</summary>
    public Task<BakeFormulaResponse> Bake(Formula given)
    {
        var inOven = new Formula(given);
        if (asked.HasOvenCelsius)
        {
            inOven.Oven = new Oven { Celsius = asked.OvenCelsius, Fan = asked.Fan };
        }

        return calls.Bake(new BakeFormulaRequest { Formula = inOven }, context);
    }

    /// <summary>What gas a formula has from soda and powder, and how long its batter may wait.</summary>
    public Task<PredictRiseResponse> Rise(Formula given) => calls.Rise(new PredictRiseRequest { Formula = given }, context);

    /// <summary>What a formula reads as it is given.</summary>
    public Task<BalanceFormulaResponse> Balance(Formula given) => calls.Balance(new BalanceFormulaRequest { Formula = given }, context);

    /// <summary>A household measure in grams.</summary>
    public async Task<ConvertedLine> Convert() =>
        (await calls.Convert(new ConvertLinesRequest { Lines = { asked.Measure } }, context)).Lines[0];

    private Habits Habits(bool withLimits)
    {
        var habits = new Habits { Answers = 1 };
        habits.Limits.AddRange(withLimits ? limits.Of(asked.Targets, formula) : []);
        return habits;
    }

    private static string Name(string id) => $"ingredients/{ResourceName.IngredientId(id)}";
}
