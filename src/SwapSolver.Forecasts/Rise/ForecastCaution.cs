namespace SwapSolver.Forecasts;

/// <summary>Something that a baker should know of a forecast.</summary>
/// <param name="Id">Id of its sentence in <c>data/wording/answers.json</c>, as <c>rise-soda-left</c>.</param>
/// <param name="Text">The sentence.</param>
public sealed record ForecastCaution(string Id, string Text);
