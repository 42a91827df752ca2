using SwapSolver.Service;

var options = ServiceOptions.Read(args, out var wrong);
if (options is null)
{
    await Console.Error.WriteLineAsync(wrong);
    return 2;
}

return await ServiceHost.Run(options);
