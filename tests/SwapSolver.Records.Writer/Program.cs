using System.Globalization;
using SwapSolver.Records;
using SwapSolver.Records.Formulas;

// A small program that writes without an end, for the tests that end it in the middle: it says each write when, and only when,
// it was acknowledged. Words: the place, the first number, how many.
const string At = "2026-05-01T12:00:00.000Z";
var (place, first, count) = (args[0], int.Parse(args[1], CultureInfo.InvariantCulture), int.Parse(args[2], CultureInfo.InvariantCulture));
try
{
    using var records = new KitchenRecords(place);
    for (var number = first; number < first + count; number++)
    {
        var draft = new FormulaDraft($$"""{"n":{{number}}}""", "Loaf", $"write {number}", "[]");
        var id = string.Create(CultureInfo.InvariantCulture, $"loaf-{number % 20}");
        var changed = await records.Formulas.UpdateAsync(id, draft, string.Empty, mayBeNew: true, new WriteRequest(string.Empty, string.Empty, At, At));
        if (changed.Outcome != Outcome.Done)
        {
            Console.WriteLine(changed.Outcome);
            return 1;
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{number} {id} {changed.Now!.Newest}"));
        Console.Out.Flush();
    }

    return 0;
}
catch (RecordsFaultException fault)
{
    Console.WriteLine(fault.Message);
    return 3;
}
