namespace SwapSolver.Console.Tests.Running;

/// <summary>A kitchen with records of its own and files beside them, gone after the test.</summary>
internal sealed class OwnKitchen : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("swapsolver-tests-");

    /// <summary>Runs the console with these records.</summary>
    public Task<Ran> Run(params string[] arguments) => BuiltConsole.Run([.. arguments, "--records", Path.Combine(folder.FullName, "records")]);

    /// <summary>Writes a file and says where it lies.</summary>
    public string File(string name, string text)
    {
        var path = Path.Combine(folder.FullName, name);
        System.IO.File.WriteAllText(path, text);
        return path;
    }

    public void Dispose() => folder.Delete(recursive: true);
}
