namespace SwapSolver.Service.Limits;

/// <summary>A setting of the service that cannot be what it says.</summary>
/// <param name="setting">Its name, as in <c>Limits:SolvesAtOnce</c>.</param>
/// <param name="value">What it says.</param>
/// <param name="wayOut">What it may say.</param>
public sealed class SettingFaultException(string setting, string? value, string wayOut)
    : Exception($"setting {setting}: '{value}' cannot be used; {wayOut}");
