using System.CommandLine;
using Grpc.Core;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Working;
using SwapSolver.V1;
using Diet = SwapSolver.V1.VaryFormulaRequest.Types.Diet;
using Part = SwapSolver.V1.Catalogue.Types.Part;

namespace SwapSolver.Console.Verbs;

/// <summary><c>job start</c>: begins a job and watches it.</summary>
internal sealed class JobStart
{
    private readonly Option<Part[]> parts = new("--parts")
    {
        Description = "What is solved: variants (each formula for each diet and without each allergen), charts (each ingredient against what could stand in its place). Without it: both.",
        HelpName = "PART",
        CustomParser = result => OptionText.Each(result, "--parts", text => EnumWord.Read<Part>(Catalogue.Descriptor.EnumTypes[0], text)),
    };

    private readonly Option<string[]> formulas = new("--formula")
    {
        Description = "Only these stored formulas, as almond-rolls,my-tin-loaf. Without it: every one.",
        HelpName = "A,B",
        CustomParser = result => OptionText.Names(result, "--formula", "Write stored formulas, as --formula almond-rolls."),
    };

    private readonly Option<string[]> without = new("--without")
    {
        Description = "A variant without each of these, as tree-nuts,milk. Without it and --diet: without each allergen, and for each diet.",
        HelpName = "A,B",
        CustomParser = result => OptionText.Names(result, "--without", "Write what to leave out, as --without tree-nuts,milk."),
    };

    private readonly Option<Diet[]> diets = new("--diet")
    {
        Description = "A variant for this way of eating: vegetarian, vegan, dairy-free. May be given again.",
        HelpName = "DIET",
        CustomParser = result => OptionText.Each(result, "--diet", text => EnumWord.Read<Diet>(VaryFormulaRequest.Descriptor.EnumTypes[0], text)),
    };

    private readonly Option<string?> called = new("--name") { Description = "What the job is called.", HelpName = "NAME" };

    private readonly Option<bool> leave = new("--leave") { Description = "Do not watch it: a service on the network goes on with it by itself." };

    private readonly Option<string?> outFile = JobFollow.OutFile();

    /// <summary>The verb.</summary>
    public static VerbCommand Create(Errand errand)
    {
        var start = new JobStart();
        var verb = new VerbCommand(
            "start",
            "Begins charts and variants of the catalogue, and watches them. Ctrl-C leaves the job, which job watch goes on with.",
            "swapsolver job start --parts variants --diet vegan --out variants.jsonl")
        {
            start.parts, start.formulas, start.without, start.diets, start.called, start.leave, start.outFile,
        };
        verb.Validators.Add(result =>
        {
            if (result.GetValue(start.leave) && result.GetResult(start.outFile) is not null)
            {
                result.AddError("--out takes the results while the job is watched, and --leave does not watch it: take them later with job results JOB --out FILE.");
            }
        });
        verb.SetAction((parse, cancel) => errand.WithServiceAsync(parse, (service, settings) => start.RunAsync(service, settings, parse, cancel), cancel));
        return verb;
    }

    private async Task<int> RunAsync(IServiceConnection service, SharedSettings settings, ParseResult parse, CancellationToken cancel)
    {
        Job job;
        try
        {
            var client = new JobService.JobServiceClient(await service.ReadyAsync(cancel));
            job = await client.CreateCatalogueJobAsync(Read(parse), new CallOptions(deadline: DateTime.UtcNow + settings.Deadline, cancellationToken: cancel));
        }
        catch (RpcException fault)
        {
            cancel.ThrowIfCancellationRequested();
            await ServiceFault.WriteAsync(fault, service, settings.Deadline);
            return ExitCode.Of(fault.StatusCode);
        }

        if (parse.GetValue(leave))
        {
            JobFollow.Show(job, settings);
            ErrorOutput.Write($"Watch it with: swapsolver job watch {JobName.Id(job.Name)}{(settings.Server is null ? " (without a service on the network it is worked on while it is watched)" : string.Empty)}");
            return ExitCode.Answer;
        }

        ErrorOutput.Write($"job {JobName.Id(job.Name)} is begun.");
        return await JobFollow.RunAsync(service, settings, job.Name, parse.GetValue(outFile), cancel);
    }

    private CreateCatalogueJobRequest Read(ParseResult parse)
    {
        var catalogue = new Catalogue();
        catalogue.Parts.AddRange(parse.GetValue(parts) is { Length: > 0 } some ? some : [Part.Variants, Part.Charts]);
        catalogue.Formulas.AddRange((parse.GetValue(formulas) ?? []).Select(FormulaName.ToResourceName));
        catalogue.Without.AddRange(parse.GetValue(without) ?? []);
        catalogue.Diets.AddRange(parse.GetValue(diets) ?? []);
        // Sent again by a retry, it begins no second job.
        return new CreateCatalogueJobRequest { DisplayName = parse.GetValue(called) ?? string.Empty, Catalogue = catalogue, RequestId = Guid.NewGuid().ToString() };
    }
}
