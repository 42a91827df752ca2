using System.CommandLine;
using Grpc.Core;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Screens;
using SwapSolver.Console.Working;
using SwapSolver.V1;
using Client = SwapSolver.V1.JobService.JobServiceClient;

namespace SwapSolver.Console.Verbs;

/// <summary><c>job</c>: charts and variants of the whole catalogue, as work that goes on by itself.</summary>
internal static class Jobs
{
    /// <summary>The verb with its own verbs.</summary>
    public static Command Create(Errand errand) => new("job", "Charts and variants of the whole catalogue, as work that can be stopped and goes on.")
    {
        JobStart.Create(errand),
        JobFollow.Create(errand),
        List(errand),
        Show(errand),
        Tell(errand, "pause", "Lets a job wait; nothing that was written is lost.", (client, name, options) => client.PauseJobAsync(new PauseJobRequest { Name = name }, options)),
        Tell(errand, "resume", "Lets a paused job go on.", (client, name, options) => client.ResumeJobAsync(new ResumeJobRequest { Name = name }, options)),
        Tell(errand, "cancel", "Gives a job up for good; its results so far stay.", (client, name, options) => client.CancelJobAsync(new CancelJobRequest { Name = name }, options)),
        JobResults.Create(errand),
    };

    private static VerbCommand List(Errand errand)
    {
        var verb = new VerbCommand("list", "The jobs, newest first.", "swapsolver job list");
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse, new Question<ListJobsResponse>(_ => Task.FromResult<Checked<ServiceCall<ListJobsResponse>>>((ServiceCall<ListJobsResponse>)AllAsync), JobScreen.ShowAll, _ => ExitCode.Answer), cancel));
        return verb;
    }

    private static VerbCommand Show(Errand errand) =>
        Tell(errand, "show", "A job and how far it is.", (client, name, options) => client.GetJobAsync(new GetJobRequest { Name = name }, options));

    private static VerbCommand Tell(Errand errand, string word, string says, Func<Client, string, CallOptions, AsyncUnaryCall<Job>> ask)
    {
        var name = new JobName();
        var verb = new VerbCommand(word, says, $"swapsolver job {word} 0a1b2c3d4e") { name };
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<Job>(
                _ => Task.FromResult<Checked<ServiceCall<Job>>>((ServiceCall<Job>)(async (service, options) => await ask(new Client(service), name.Read(parse), options))), JobScreen.Show, _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private static Task<ListJobsResponse> AllAsync(CallInvoker service, CallOptions options) => AllPages.OfAsync(
        token => new Client(service).ListJobsAsync(new ListJobsRequest { PageSize = AllPages.Size, PageToken = token }, options));
}
