using System.CommandLine;

namespace SwapSolver.Console.Working;

/// <summary>Names of jobs as they are typed, bare or as resource names.</summary>
internal sealed class JobName : Argument<string>
{
    private const string Collection = "jobs/";

    /// <summary>Names the argument.</summary>
    public JobName()
        : base("JOB")
    {
        Description = "A job, as job list shows it.";
    }

    /// <summary>The id of a resource name.</summary>
    public static string Id(string name) => name.StartsWith(Collection, StringComparison.Ordinal) ? name[Collection.Length..] : name;

    /// <summary>The resource name that the command line gives.</summary>
    public string Read(ParseResult parse) => Collection + Id(parse.GetRequiredValue(this).Trim());
}
