using SwapSolver.Data.Files;
using SwapSolver.Service.Stored;

namespace SwapSolver.Service.Tests.Stored;

public sealed class StoredFormulasTests : IDisposable
{
    private readonly DirectoryInfo data = Directory.CreateTempSubdirectory("swapsolver-formulas-");

    public void Dispose() => data.Delete(recursive: true);

    [Fact]
    public void A_card_that_nobody_can_read_is_told_by_its_file_and_the_others_are_read()
    {
        var folder = data.CreateSubdirectory("formulas").FullName;
        File.WriteAllText(Path.Combine(folder, "plain-loaf.json"), """{ "displayName": "Plain loaf", "slices": 12 }""");
        File.WriteAllText(Path.Combine(folder, "torn-loaf.json"), """{ "displayName": "Torn loaf", "slices": """);
        File.WriteAllText(Path.Combine(folder, "odd-loaf.json"), """{ "displayName": "Odd loaf", "crust": "thick" }""");
        var formulas = StoredFormulas.In(new DataFolder(data.FullName));

        Assert.Equal(["formulas/odd-loaf", "formulas/plain-loaf", "formulas/torn-loaf"], formulas.Names.Order(StringComparer.Ordinal));
        Assert.Equal(12, formulas.Find("formulas/plain-loaf")!.Slices);
        Assert.Same(formulas.Find("formulas/plain-loaf"), formulas.Find("formulas/plain-loaf"));
        Assert.Null(formulas.Find("formulas/no-loaf"));
        Assert.Contains("torn-loaf.json", Assert.Throws<InvalidDataException>(() => formulas.Find("formulas/torn-loaf")).Message, StringComparison.Ordinal);
        Assert.Contains("crust", Assert.Throws<InvalidDataException>(() => formulas.Find("formulas/odd-loaf")).Message, StringComparison.Ordinal);
    }
}
