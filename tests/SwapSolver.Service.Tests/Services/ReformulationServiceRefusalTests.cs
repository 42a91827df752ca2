using Google.Protobuf;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Services;

[Collection(StrictKitchen.Name)]
public sealed class ReformulationServiceRefusalTests(StrictKitchen kitchen)
{
    [Theory]
    [InlineData("{}", "size", "missing", "massGrams, factor, tin or slices")]
    [InlineData("""{ "slices": 0 }""", "slices", "'0'", "give 1 to 1000")]
    [InlineData("""{ "slices": -7 }""", "slices", "'-7'", "give 1 to 1000")]
    [InlineData("""{ "factor": 2, "slices": 5000 }""", "slices", "'5000'", "give 1 to 1000")]
    [InlineData("""{ "factor": 0 }""", "factor", "'0'", "between 0.05 and 100")]
    [InlineData("""{ "factor": -2 }""", "factor", "'-2'", "between 0.05 and 100")]
    [InlineData("""{ "factor": 101 }""", "factor", "'101'", "between 0.05 and 100")]
    [InlineData("""{ "factor": "NaN" }""", "factor", "'NaN'", "between 0.05 and 100")]
    [InlineData("""{ "factor": "Infinity" }""", "factor", "'Infinity'", "between 0.05 and 100")]
    [InlineData("""{ "massGrams": -500 }""", "massGrams", "'-500'", "give")]
    [InlineData("""{ "massGrams": 0 }""", "massGrams", "'0'", "give")]
    [InlineData("""{ "massGrams": 1e9 }""", "massGrams", "'1000000000'", "give")]
    [InlineData("""{ "massGrams": "NaN" }""", "massGrams", "'NaN'", "give")]
    [InlineData("""{ "tin": { "lengthMm": 0, "widthMm": 110, "heightMm": 65 } }""", "tin.lengthMm", "'0'", "more than 0")]
    [InlineData("""{ "tin": { "lengthMm": 200, "widthMm": "NaN", "heightMm": 65 } }""", "tin.widthMm", "'NaN'", "more than 0")]
    [InlineData("""{ "tin": { "lengthMm": 200, "widthMm": 110, "heightMm": 1e6 } }""", "tin.heightMm", "'1000000'", "at most 1000")]
    public async Task A_size_that_no_kitchen_bakes_is_refused(string size, string field, string value, string wayOut)
    {
        var request = JsonParser.Default.Parse<ResizeFormulaRequest>(size);
        request.Formula = Bakes.Hazelnut;
        (await kitchen.Refuses(service => service.Reformulations.ResizeFormulaAsync(request))).Names(field, value, wayOut);
    }
}
