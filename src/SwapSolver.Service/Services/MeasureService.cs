using Grpc.Core;
using SwapSolver.Lines;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Translation;
using SwapSolver.V1;

namespace SwapSolver.Service.Services;

/// <summary>Turns lines of text into grams.</summary>
internal sealed class MeasureService(IngredientLines lines) : V1.MeasureService.MeasureServiceBase
{
    private const int MostLines = 500;

    /// <inheritdoc/>
    public override Task<ConvertLinesResponse> ConvertLines(ConvertLinesRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        if (request.Lines.Count is < 1 or > MostLines)
        {
            problems.Add("lines", request.Lines.Count, "lines cannot be read", $"give 1 to {MostLines}");
        }

        var system = MeasureSystems.Read(request.System, "system", problems);
        problems.ThrowIfAny();
        var response = new ConvertLinesResponse();
        foreach (var line in request.Lines)
        {
            context.CancellationToken.ThrowIfCancellationRequested();
            response.Lines.AddRange(lines.Read(line, system).Select(reading => ConvertedLineWriter.Write(line, reading)));
        }

        return Task.FromResult(response);
    }
}
