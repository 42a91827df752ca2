using System.Collections.Immutable;
using Grpc.Core;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Solves;
using SwapSolver.Service.Translation;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Questions;
using SwapSolver.V1;
using Domain = SwapSolver.Kitchen.Formulas;
using Swap = SwapSolver.Solving.Questions.Swap;

namespace SwapSolver.Service.Services;

/// <summary>Measures formulas and checks proposed swaps.</summary>
internal sealed class BalanceService(AnswerSearch search, Subject subject, SolveRoom room, AnswerCache cache)
    : V1.BalanceService.BalanceServiceBase
{
    private const int MostSwaps = 10;

    private readonly AnswerWriter writer = new(search.Bakehouse);

    /// <inheritdoc/>
    public override Task<BalanceFormulaResponse> BalanceFormula(BalanceFormulaRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        var read = subject.Read(request.Name, request.Formula, problems);
        var origin = request.BandsOf is { } of ? subject.ReadAsGiven(of.Name, of.Formula, problems, "bandsOf.formula") : null;
        problems.ThrowIfAny();
        return cache.Get(request, context, async () =>
        {
            var question = new Measurement(read!.Formula, read.Measured) { BandsOf = origin?.Formula };
            // A few sums: they wait for nobody's solve.
            var measured = request.TypicalOnly
                ? new MeasuredFormula(question.ReadTypical(search), [], null, false)
                : await room.Run(context, (clock, cancel) => question.Answer(search, clock, cancel));
            return (Write(read, measured), measured.EndedEarly);
        });
    }

    /// <inheritdoc/>
    public override Task<CheckSwapResponse> CheckSwap(CheckSwapRequest request, ServerCallContext context) => CheckSwap(request, context, withRanges: true);

    /// <summary>The same for who may not tell the readings: then they need no ranges.</summary>
    /// <param name="request">The question.</param>
    /// <param name="context">The call.</param>
    /// <param name="withRanges">Whether readings are told.</param>
    internal Task<CheckSwapResponse> CheckSwap(CheckSwapRequest request, ServerCallContext context, bool withRanges)
    {
        var problems = new ProblemList();
        var read = subject.Read(request.Name, request.Formula, problems);
        var formula = read?.Formula;
        KnownFacts.Require(search.Bakehouse.Balances, formula, problems);
        var swaps = formula is null ? [] : ReadSwaps(request, formula, problems);
        var reader = new HabitsReader(search.Bakehouse, problems);
        var habits = formula is null ? null : reader.Read(request.Habits, formula);
        var limits = reader.ReadLimits(request.Habits);
        KnownFacts.RequireLimits(limits, formula, swaps.Select(swap => swap.To).OfType<Kitchen.Ingredients.Ingredient>(), problems);
        problems.ThrowIfAny();
        // A few sums, which wait for nobody's solve; only where they do not balance is a repair looked for.
        var measured = new SwapCheck(formula!, swaps, limits, habits!).Measure(search);
        if (measured.Balances)
        {
            return Task.FromResult(cache.Summed(request, context, Write(read!, measured.Yes(search, withRanges))));
        }

        return cache.Get(request, context, async () =>
        {
            var verdict = await room.Run(context, (clock, cancel) => measured.Repaired(search, clock, cancel));
            OutOfTime.ThrowIf(verdict.RanOutOfTime);
            return (Write(read!, verdict), verdict.EndedEarly);
        });
    }

    private ImmutableArray<Swap> ReadSwaps(CheckSwapRequest request, Domain.Formula formula, ProblemList problems)
    {
        if (request.Swaps.Count is 0 or > MostSwaps)
        {
            problems.Add("swaps", request.Swaps.Count, "swaps cannot be checked", $"give 1 to {MostSwaps}, as from ingredients/baking-soda to ingredients/potassium-bicarbonate");
        }

        foreach (var twice in request.Swaps.GroupBy(swap => ResourceName.IngredientId(swap.From)).Where(group => group.Count() > 1))
        {
            problems.Add("swaps", twice.First().From, "goes out twice", "name each ingredient that goes out once");
        }

        return [.. request.Swaps.Take(MostSwaps).Select((swap, index) => ReadSwap(swap, formula, $"swaps[{index}]", problems)).OfType<Swap>()];
    }

    private Swap? ReadSwap(V1.Swap swap, Domain.Formula formula, string path, ProblemList problems)
    {
        var names = new LineReader(search.Bakehouse.Pantry, problems);
        var from = names.IngredientOf(swap.From, $"{path}.from");
        var to = string.IsNullOrEmpty(swap.To) ? null : names.IngredientOf(swap.To, $"{path}.to");
        if (from is not null && formula.MassOf(from) == Grams.None)
        {
            problems.Add($"{path}.from", swap.From, "is not in the formula", $"name one of its lines: {string.Join(", ", Ids(formula))}");
        }

        KnownFacts.Require(search.Bakehouse.Balances, to, $"{path}.to", problems);
        if (swap.HasGrams && !(swap.Grams is >= 0 and <= LineReader.MostGrams))
        {
            problems.Add($"{path}.grams", swap.Grams, "cannot be weighed", $"give 0 to {LineReader.MostGrams} g");
        }

        var goes = from is null || !swap.HasFromGrams ? null : ReadGoing(swap.FromGrams, formula.MassOf(from), isForItself: from.Equals(to), path, problems);

        // Nothing of something is nothing: the swap leaves out.
        return from is null ? null
            : swap is { HasGrams: true, Grams: 0 } ? new Swap(from, null, null) { Goes = goes }
            : new Swap(from, to, swap.HasGrams ? new Grams(swap.Grams) : null) { Goes = goes };
    }

    /// <summary>How much goes out where that is not all; null where it is.</summary>
    private static Grams? ReadGoing(double goes, Grams has, bool isForItself, string path, ProblemList problems)
    {
        if (isForItself)
        {
            problems.Add($"{path}.from_grams", goes, "cannot go out and come in again", "leave it away, and give as 'grams' what is to be in the bowl");
        }
        else if (has > Grams.None && !(goes > 0 && goes <= has.Value))
        {
            problems.Add($"{path}.from_grams", goes, "cannot go out of this formula", $"give above 0 and at most the {has.Value} g that it has");
        }

        return goes == has.Value ? null : new Grams(goes);
    }

    private static IEnumerable<string> Ids(Domain.Formula formula) =>
        formula.Lines.Select(line => line.Ingredient.Id).Distinct();

    private BalanceFormulaResponse Write(ReadFormula read, MeasuredFormula measured)
    {
        var formula = read.Formula;
        var written = new BalanceFormulaResponse
        {
            Nutrition = writer.Nutrition(formula),
            Allergens = writer.Allergens(formula),
            Formula = FormulaWriter.Write(formula),
            Repair = measured.Repair is null ? null : writer.Write(measured.Repair),
        };
        written.Readings.AddRange(measured.Readings.Select(ReadingWriter.Write));
        written.Cautions.AddRange(measured.Cautions);
        written.LinesRead.AddRange(read.LinesRead);
        written.BakersPercentages.AddRange(formula.Lines.Select(line =>
        {
            var share = new BakersPercentage { Ingredient = ResourceName.Of(line.Ingredient), Grams = line.Grams.Value };
            if (formula.BakersPercentage(line) is { } percent)
            {
                share.Percent = percent.Value;
            }

            return share;
        }));
        return written;
    }

    private CheckSwapResponse Write(ReadFormula read, SwapVerdict verdict)
    {
        var written = new CheckSwapResponse
        {
            Verdict = VerdictWriter.Write(verdict.Verdict),
            Repair = verdict.Repair is null ? null : writer.Write(verdict.Repair),
            Swapped = FormulaWriter.Write(verdict.Swapped),
            Reply = verdict.Reply,
        };
        written.Readings.AddRange(verdict.Readings.Select(ReadingWriter.Write));
        written.Cautions.AddRange(verdict.Cautions);
        written.Reasons.AddRange(verdict.Reasons);
        written.Conflict.AddRange(verdict.Conflict.Select(AnswerWriter.Write));
        written.LinesRead.AddRange(read.LinesRead);
        return written;
    }
}
