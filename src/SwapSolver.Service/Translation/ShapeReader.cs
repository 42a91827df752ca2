using SwapSolver.Kitchen.Quantities;
using SwapSolver.Service.Faults;
using Domain = SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Service.Translation;

/// <summary>Reads what a formula is baked in.</summary>
internal static class ShapeReader
{
    private const double MostMillimetres = 1000;

    private const int MostPieces = 1000;

    /// <summary>The shape; null where none is said.</summary>
    public static Domain.Shape? Read(V1.Shape? shape, string path, ProblemList problems) => shape?.KindCase switch
    {
        V1.Shape.KindOneofCase.Tin => ReadTin(shape.Tin, $"{path}.tin", problems),
        V1.Shape.KindOneofCase.FreeForm => new Domain.FreeForm(
            shape.FreeForm.HasLengthMm ? Length(shape.FreeForm.LengthMm, $"{path}.freeForm.lengthMm", problems) : null,
            shape.FreeForm.HasWidthMm ? Length(shape.FreeForm.WidthMm, $"{path}.freeForm.widthMm", problems) : null),
        V1.Shape.KindOneofCase.Pieces => ReadPieces(shape.Pieces, $"{path}.pieces", problems),
        _ => null,
    };

    /// <summary>A tin.</summary>
    public static Domain.Tin ReadTin(V1.Tin tin, string path, ProblemList problems) => new(
        Length(tin.LengthMm, $"{path}.lengthMm", problems),
        Length(tin.WidthMm, $"{path}.widthMm", problems),
        Length(tin.HeightMm, $"{path}.heightMm", problems));

    private static Domain.Pieces ReadPieces(V1.Pieces pieces, string path, ProblemList problems)
    {
        if (pieces.Count is < 1 or > MostPieces)
        {
            problems.Add($"{path}.count", pieces.Count, "pieces cannot be", $"give 1 to {MostPieces}");
        }

        return new Domain.Pieces(pieces.Count);
    }

    private static Millimetres Length(double millimetres, string path, ProblemList problems)
    {
        if (!(millimetres is > 0 and <= MostMillimetres))
        {
            problems.Add(path, millimetres, "is no length of a tin", $"give more than 0, at most {MostMillimetres} mm");
        }

        return new Millimetres(millimetres);
    }
}
