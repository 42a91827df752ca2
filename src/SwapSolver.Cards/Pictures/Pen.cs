using System.Globalization;
using System.Xml.Linq;

namespace SwapSolver.Cards.Pictures;

/// <summary>Draws SVG in the colour of the text around it, so that it is as readable by day, by night and in print. Every text
/// is a text of the tree, so nothing that somebody typed becomes markup.</summary>
internal static class Pen
{
    /// <summary>Width of every picture: that of a small telephone, so that its letters need not shrink [px].</summary>
    public const double Width = 340;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>A sheet with a title for those who do not see it.</summary>
    public static XElement Sheet(double height, string id, string title, params IEnumerable<XElement> parts) => new(
        Svg + "svg",
        new XAttribute("viewBox", $"0 0 {Figure(Width)} {Figure(height)}"),
        new XAttribute("role", "img"),
        new XAttribute("aria-labelledby", id),
        new XElement(Svg + "title", new XAttribute("id", id), title),
        parts);

    /// <summary>A text.</summary>
    public static XElement Text(double x, double y, string text, bool atEnd = false) => new(
        Svg + "text",
        At("x", x),
        At("y", y),
        new XAttribute("font-size", "12"),
        new XAttribute("font-family", "sans-serif"),
        new XAttribute("fill", "currentColor"),
        new XAttribute("text-anchor", atEnd ? "end" : "start"),
        text);

    /// <summary>A box, filled or in outline.</summary>
    public static XElement Box(double x, double y, double width, double height, bool filled) => new(
        Svg + "rect", At("x", x), At("y", y), At("width", Math.Max(0, width)), At("height", height),
        new XAttribute("fill", filled ? "currentColor" : "none"), new XAttribute("stroke", "currentColor"));

    /// <summary>A line.</summary>
    public static XElement Line(double x1, double y1, double x2, double y2) => new(
        Svg + "line", At("x1", x1), At("y1", y1), At("x2", x2), At("y2", y2), new XAttribute("stroke", "currentColor"));

    /// <summary>A diamond about a point.</summary>
    public static XElement Diamond(double x, double y, double half) => new(
        Svg + "polygon",
        new XAttribute("points", $"{Figure(x - half)},{Figure(y)} {Figure(x)},{Figure(y - half)} {Figure(x + half)},{Figure(y)} {Figure(x)},{Figure(y + half)}"),
        new XAttribute("fill", "currentColor"));

    /// <summary>Several sheets below each other, for a file of their own.</summary>
    public static XElement Stack(string title, IReadOnlyList<XElement> sheets)
    {
        var y = 0.0;
        var placed = new List<XElement>();
        foreach (var sheet in sheets)
        {
            var height = double.Parse(sheet.Attribute("viewBox")!.Value.Split(' ')[3], CultureInfo.InvariantCulture);
            placed.Add(new XElement(sheet.Name, sheet.Attributes(), At("y", y), At("width", Width), At("height", height), sheet.Nodes()));
            y += height;
        }

        return Sheet(Math.Max(1, y), "card-pictures", title, placed);
    }

    private static XAttribute At(string name, double figure) => new(name, Figure(figure));

    private static string Figure(double figure) => figure.ToString("0.##", CultureInfo.InvariantCulture);
}
