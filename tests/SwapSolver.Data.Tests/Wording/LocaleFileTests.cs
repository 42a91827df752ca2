using SwapSolver.Data.Files;

namespace SwapSolver.Data.Tests.Wording;

public sealed class LocaleFileTests
{
    [Theory]
    [InlineData("\"de-AT\", \"decimalSign\": \",\"", "\"de-AT\", \"decimalSign\": \";\"", "\"de-AT\", \"decimalSign\": ^\";\"", "not known here")]
    [InlineData("\"firstTemperature\": \"fahrenheit\"", "\"firstTemperature\": \"kelvin\"", "\"firstTemperature\": ^\"kelvin\"", "celsius")]
    [InlineData("\"law\": \"uk\"", "\"law\": \"mars\"", "\"law\": ^\"mars\"", "no law")]
    public void A_region_that_cannot_be_written_for_is_shown_where_it_stands(string written, string spoilt, string place, string says)
    {
        using var folder = new SpoiltFolder();
        var text = folder.Replace("wording/locales.json", written, spoilt);

        Assert.Throws<DataFaultException>(folder.ReadLocales).AssertPointsAt("wording/locales.json", text, place, says);
    }

    [Theory]
    [InlineData("\"value\": 20", "\"value\": 120", "\"value\": ^120", "between")]
    [InlineData("\"fahrenheit\": 350", "\"fahrenheit\": \"hot\"", "\"fahrenheit\": ^\"hot\"", "a number")]
    public void An_oven_dial_that_cannot_be_is_shown_where_it_stands(string written, string spoilt, string place, string says)
    {
        using var folder = new SpoiltFolder();
        var text = folder.Replace("measures/oven-dials.json", written, spoilt);

        Assert.Throws<DataFaultException>(folder.ReadDials).AssertPointsAt("measures/oven-dials.json", text, place, says);
    }
}
