using System.Collections.Frozen;
using System.Collections.Immutable;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Records;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Records;
using SwapSolver.Tables;
using SwapSolver.V1;
using Format = SwapSolver.V1.ImportIngredientsRequest.Types.Format;
using RowProblem = SwapSolver.Tables.RowProblem;

namespace SwapSolver.Service.Shelf;

/// <summary>Takes in a piece of a table of foods or of household weights.</summary>
/// <param name="shelf">What this kitchen knows.</param>
/// <param name="table">Reads tables.</param>
internal sealed class Importing(KitchenShelf shelf, FoodTable table)
{
    private static readonly FrozenDictionary<Format, TableFormat> Formats = new Dictionary<Format, TableFormat>
    {
        [Format.UsdaAbbreviated] = TableFormat.UsdaAbbreviated,
        [Format.Csv] = TableFormat.Foods,
        [Format.HouseholdWeights] = TableFormat.HouseholdWeights,
    }.ToFrozenDictionary();

    /// <summary>Most rows of earlier pieces that one piece is held against.</summary>
    private const int MostEarlierRows = 100_000;

    /// <summary>Reads the piece and writes down what can be true.</summary>
    /// <exception cref="Grpc.Core.RpcException">There is no piece that could be read.</exception>
    public ImportIngredientsResponse Import(ImportIngredientsRequest request)
    {
        var slice = SliceOf(request);
        var reading = table.Read(slice);
        var notes = shelf.Records.Read();
        var earlier = request.EarlierRows.ToHashSet(StringComparer.Ordinal);
        var (foods, taken) = Foods([.. reading.Rows.Where(row => !earlier.Contains(row.Food.Id))], notes);
        var (weights, homeless) = Weights([.. reading.Weights.Where(row => !earlier.Contains(NameOf(row)))], notes);
        var again = reading.Rows.Where(row => earlier.Contains(row.Food.Id)).Select(row => Again(row.Line, row.Food.Id, "give each an id of its own"))
            .Concat(reading.Weights.Where(row => earlier.Contains(NameOf(row))).Select(row => Again(row.Line, NameOf(row), "keep one of them")));
        var written = request.ValidateOnly
            ? Compare(foods, weights, notes)
            : shelf.Records.Put(foods) + shelf.Records.Put(weights);
        ImmutableArray<RowProblem> late = [.. taken, .. homeless, .. again];
        var response = new ImportIngredientsResponse
        {
            Format = reading.Format is { } format ? Formats.First(pair => pair.Value == format).Key : Format.Unspecified,
            Added = written.Added,
            Changed = written.Changed,
            Same = written.Same,
            LeftOut = reading.LeftOut + late.Length,
        };
        response.Problems.AddRange(reading.Problems.Concat(late).OrderBy(problem => problem.Line).Take(FoodTable.MostProblems).Select(Write));
        response.Rows.AddRange(reading.Rows.Select(row => row.Food.Id).Concat(reading.Weights.Select(NameOf)));
        if (foods.Any(food => food.Allergens is null))
        {
            response.Cautions.Add(shelf.Phrases.Say("caution-table-allergens"));
        }

        return response;
    }

    private static TableSlice SliceOf(ImportIngredientsRequest request)
    {
        var problems = new ProblemList();
        if (request.Text.Length is 0 or > FoodTable.MostLetters)
        {
            problems.Add("text", request.Text.Length, "letters are no piece of a table", $"send whole lines, 1 to {FoodTable.MostLetters} letters at once");
        }

        if (request.FirstLine is < 0 or > FoodTable.MostLine)
        {
            problems.Add("firstLine", request.FirstLine, "is no number of a line", $"give 1 to {FoodTable.MostLine}, or 0 for 1");
        }

        if (request.EarlierRows.Count > MostEarlierRows)
        {
            problems.Add("earlierRows", request.EarlierRows.Count, "rows are too many", $"cut the table: at most {MostEarlierRows} rows are told apart");
        }

        if (request.Format != Format.Unspecified && !Formats.ContainsKey(request.Format))
        {
            problems.Add("format", request.Format.ToString(), "is no format", "give USDA_ABBREVIATED, CSV or HOUSEHOLD_WEIGHTS");
        }

        problems.ThrowIfAny();
        return new TableSlice(
            request.Text,
            request.Header.Length == 0 ? null : request.Header,
            Math.Max(1, request.FirstLine),
            request.Format == Format.Unspecified ? null : Formats[request.Format]);
    }

    /// <summary>What is let in. A table does not overwrite the bag on the shelf.</summary>
    private static (ImmutableArray<StatedFood> Foods, ImmutableArray<RowProblem> Problems) Foods(ImmutableArray<FoodRow> rows, KitchenNotes notes)
    {
        var bags = notes.Written.Where(food => food.Origin == FoodOrigin.Packet).Select(food => food.Id).ToHashSet(StringComparer.Ordinal);
        return (
            [.. rows.Where(row => !bags.Contains(row.Food.Id)).Select(row => row.Food)],
            [
                .. rows.Where(row => bags.Contains(row.Food.Id))
                    .Select(row => new RowProblem(row.Line, "id", row.Food.Id, "is a packet that was added to this kitchen", "give the row an id of its own, or remove the packet first")),
            ]);
    }

    private (ImmutableArray<HouseholdWeight> Weights, ImmutableArray<RowProblem> Problems) Weights(ImmutableArray<WeightRow> rows, KitchenNotes notes)
    {
        if (rows.IsEmpty)
        {
            return ([], []);
        }

        var owners = new WeightOwners(shelf.Shipped, notes.Written.Select(food => food.Id));
        var weights = ImmutableArray.CreateBuilder<HouseholdWeight>();
        var problems = ImmutableArray.CreateBuilder<RowProblem>();
        foreach (var row in rows)
        {
            var ids = owners.Of(row.FoodId);
            weights.AddRange(ids.Select(id => new HouseholdWeight(id, row.Measure)));
            if (ids.IsEmpty)
            {
                problems.Add(new RowProblem(row.Line, string.Empty, row.FoodId, "is no food of this kitchen", "put the food in first, by its own table"));
            }
        }

        return (weights.ToImmutable(), problems.ToImmutable());
    }

    /// <summary>What a household weight is about: no table says it twice.</summary>
    private static string NameOf(WeightRow row) => FormattableString.Invariant($"{row.FoodId}: {row.Measure.Amount:0.######} {row.Measure.Measure}");

    private static RowProblem Again(int line, string name, string wayOut) =>
        new(line, string.Empty, name, "stands in an earlier part of the table too, and that row is the one that counts", wayOut);

    /// <summary>What a writing would do.</summary>
    private static RowsWritten Compare(
        ImmutableArray<StatedFood> foods, ImmutableArray<HouseholdWeight> weights, KitchenNotes notes)
    {
        var known = notes.Written.ToDictionary(food => food.Id, StringComparer.Ordinal);
        var weighed = notes.Weights.ToDictionary(weight => (weight.IngredientId, weight.Measure.Measure, weight.Measure.Amount));
        return Count(foods, food => known.GetValueOrDefault(food.Id)?.Food, KitchenRecords.AreSame)
            + Count(weights, weight => weighed.GetValueOrDefault((weight.IngredientId, weight.Measure.Measure, weight.Measure.Amount)), (one, other) => one == other);
    }

    private static RowsWritten Count<T>(ImmutableArray<T> rows, Func<T, T?> before, Func<T, T, bool> areSame)
        where T : class
    {
        var added = rows.Count(row => before(row) is null);
        var same = rows.Count(row => before(row) is { } there && areSame(row, there));
        return new RowsWritten(added, rows.Length - added - same, same);
    }

    private static V1.RowProblem Write(RowProblem problem) => new()
    {
        Line = problem.Line,
        Field = problem.Field,
        Value = problem.Value,
        Reason = problem.Reason,
        WayOut = problem.WayOut,
    };
}
