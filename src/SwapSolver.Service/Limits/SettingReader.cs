using System.Globalization;

namespace SwapSolver.Service.Limits;

/// <summary>Reads figures of a section of the configuration, each within its range.</summary>
internal sealed class SettingReader(IConfigurationSection section)
{
    /// <summary>A whole figure.</summary>
    /// <exception cref="SettingFaultException">It is none, or outside its range.</exception>
    public int Whole(string name, int usual, int least, int most) => section[name] switch
    {
        null => usual,
        var text when int.TryParse(text, NumberStyles.Integer, CultureInfo.InvariantCulture, out var figure) && figure >= least && figure <= most => figure,
        var text => throw new SettingFaultException($"{section.Path}:{name}", text, $"give a whole figure from {least} to {most}"),
    };

    /// <summary>A figure.</summary>
    /// <exception cref="SettingFaultException">It is none, or outside its range.</exception>
    public double Figure(string name, double usual, double least, double most) => section[name] switch
    {
        null => usual,
        var text when double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var figure) && figure >= least && figure <= most => figure,
        var text => throw new SettingFaultException(
            $"{section.Path}:{name}", text, string.Create(CultureInfo.InvariantCulture, $"give a figure from {least} to {most}")),
    };
}
