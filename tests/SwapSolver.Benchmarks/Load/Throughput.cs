using System.Diagnostics;
using Google.Protobuf;
using Grpc.Core;
using Grpc.Health.V1;
using SwapSolver.Benchmarks.Calls;
using SwapSolver.V1;

namespace SwapSolver.Benchmarks.Load;

/// <summary>How much is answered: questions in words beside what the solver alone could do, and calls that need no solve beside empty ones.
/// What asks runs on the same processors, so each rate has its callers in it.</summary>
internal static class Throughput
{
    /// <summary>Callers at once: more than processors, so that none of them waits for an answer to travel.</summary>
    private const int Callers = 8;

    /// <summary>Parts of the stream. After each of them every question is asked by itself: this machine is not as quick at one minute as at
    /// another, and what is compared is measured side by side.</summary>
    private const int Parts = 20;

    /// <summary>Memory is looked at after every part; the looks of one in so many parts are taken together, for one alone hangs on how long ago
    /// the collector ran.</summary>
    private const int Looks = 5;

    /// <summary>Rounds in which calls that need no solve are measured, each kind for a while in each round: side by side, for the same reason.</summary>
    private const int Rounds = 6;

    /// <summary>Number of the first question that is asked by itself: beyond all those of the stream.</summary>
    private const int AskedAlone = 10_000_000;

    /// <summary>One in so many is asked of a loaf that nobody asked about before.</summary>
    private const int Others = 5;

    /// <summary>By how much one such loaf differs from the next [g].</summary>
    private const double LeastGrams = 0.001;

    /// <summary>By how much the part that is swapped differs from one check to the next [g].</summary>
    private const double LeastPart = 0.00001;

    /// <summary>Checks that are on their way at once on a stream.</summary>
    private const int OnTheirWay = 64;

    /// <summary>How long one kind of call is measured in one round.</summary>
    private static readonly TimeSpan Measured = TimeSpan.FromSeconds(1.5);

    private static readonly Formula[] Loaves = [.. Questions.All.Select(question => FormulaMessage.Of(question.Formula))];

    /// <summary>What readers ask, of every kind.</summary>
    private static readonly string[] Asked =
    [
        "can I leave out the egg?", "is there a nut-free version?", "no milk please", "can I make it vegan?", "under 2 g net carbs a slice",
        "can I make it in 20 slices?", "can I swap the butter for coconut oil?", "make it softer", "less salt please", "double it", "what can I use instead of psyllium",
    ];

    /// <summary>Runs it.</summary>
    /// <param name="rows">How many questions are asked in words.</param>
    public static async Task<int> Run(int rows)
    {
        // What is kept of answers fills before a fifth of the rows is answered, so that memory tells what the stream itself holds.
        await using var service = await ServiceProcess.Start(("Limits:StreamSeconds", "3600"), ("Limits:SolvesWaiting", "64"), ("Limits:AnswerBytes", "8000000"));
        using var channel = service.Open();
        var calls = channel.CreateCallInvoker();
        var questions = new QuestionService.QuestionServiceClient(calls);

        var number = 0;
        foreach (var _ in Enumerable.Range(0, Asked.Length * Loaves.Length))
        {
            await questions.AnswerQuestionAsync(Row(number++));
        }

        // Each by itself: what the solver takes for them when nothing else runs.
        async Task<double> SolverSeconds() => await service.Metric(line => line.StartsWith("swapsolver_solve_duration_seconds_sum", StringComparison.Ordinal));
        var (solving, alone) = (0.0, 0);
        async Task AskAlone()
        {
            var before = await SolverSeconds();
            for (var one = 0; one < Asked.Length * Loaves.Length; one++)
            {
                await questions.AnswerQuestionAsync(Row(AskedAlone + alone++));
            }

            solving += await SolverSeconds() - before;
        }

        var streamed = -await SolverSeconds();
        var (early, late, seconds) = await Stream(service, questions, rows, number, AskAlone);
        streamed += await SolverSeconds() - solving;
        var (rate, solve) = (rows / seconds, solving / alone);
        number += rows;
        // The same kinds of loaves otherwise weighed, each another one: nothing that was found out of a loaf before serves for it.
        var others = rows / Others;
        var (_, _, othersSeconds) = await Stream(service, questions, others, number, () => Task.CompletedTask, isWeighedAnew: true);

        var health = new Health.HealthClient(calls);
        var substitutions = new SubstitutionService.SubstitutionServiceClient(calls);
        var variant = new VaryFormulaRequest { Formula = Loaves[0], Without = { "egg" } };
        var answer = await substitutions.VaryFormulaAsync(variant);
        var balances = new BalanceService.BalanceServiceClient(calls);
        var asked = Check("butter", "coconut-oil", 0);
        var rates = await Rates(
            Called(one => health.CheckAsync(new HealthCheckRequest()).ResponseAsync),
            Called(one => questions.AnswerQuestionAsync(Row(one % (Asked.Length * Loaves.Length))).ResponseAsync),
            Called(one => substitutions.VaryFormulaAsync(variant).ResponseAsync),
            Called(Unread(calls, "grpc.health.v1.Health", "Check", [])),
            Called(Unread(calls, "swapsolver.v1.SubstitutionService", "VaryFormula", variant.ToByteArray())),
            Called(one => balances.CheckSwapAsync(asked).ResponseAsync));
        var (empty, again, kept, emptyUnread, keptUnread, checkedAgain) = (rates[0], rates[1], rates[2], rates[3], rates[4], rates[5]);
        // Beside an empty call of their own: thousands of new answers a second leave no room for those that were kept. Coconut oil for butter
        // is answered by arithmetic alone, sunflower for walnut looks for a repair.
        var anew = await Rates(
            Called(one => health.CheckAsync(new HealthCheckRequest()).ResponseAsync),
            (time, next) => CheckedOnStream(questions, "butter", "coconut-oil", time, next),
            Called(one => balances.CheckSwapAsync(Check("butter", "coconut-oil", one)).ResponseAsync),
            Called(one => balances.CheckSwapAsync(Check("walnut-meal", "sunflower-seed-flour", one)).ResponseAsync));

        return LoadPage.Write("How much is answered", [
            Found.Told("questions in words, a second", $"{rows}, {rate:0.0}"),
            Found.Told("solver's time for one, asked alone", $"{solve * 1000:0.0} ms"),
            Found.Told("the same on the stream, where every processor solves", $"{streamed / rows * 1000:0.0} ms"),
            Found.AtLeast($"rate beside {Environment.ProcessorCount} processors that only solve", rate * solve / Environment.ProcessorCount, 0.7),
            Found.Told("the same where every one is of another loaf, a second", $"{others}, {others / othersSeconds:0.0}"),
            Found.AtMost("resident memory, last fifth of them beside the second (room for 8 MB of kept answers)", late / early, 1.1),
            Found.Told("that memory", $"{early:0} and {late:0} MB"),
            Found.Told("empty calls a second", $"{empty:0}"),
            Found.AtLeast("the questions in words asked again, one by one, beside an empty call", again / empty, 0.85),
            Found.AtLeast("a long answer asked for again, beside an empty call", kept / empty, 0.85),
            Found.Told("the same where neither's callers read what comes back", $"{keptUnread / emptyUnread:0.0000}"),
            Found.Told("size of that question and of its answer", $"{variant.CalculateSize()} and {answer.CalculateSize()} bytes"),
            Found.Told("a check that was asked before, beside an empty call", $"{checkedAgain / empty:0.0000}"),
            Found.AtLeast("a check that needs no solve and was not asked before, on the stream of questions, beside an empty call", anew[1] / anew[0], 0.6),
            Found.AtLeast("the same as a call of its own, which is told the range of each reading", anew[2] / anew[0], 0.6),
            Found.Told("a check that looks for a repair, as a call of its own", $"{anew[3] / anew[0]:0.0000}"),
        ]);
    }

    /// <summary>A swap of another part of a line each time: it reads otherwise than those before.</summary>
    private static CheckSwapRequest Check(string from, string to, int number) => new()
    {
        Formula = Loaves[0],
        Swaps = { new Swap { From = $"ingredients/{from}", To = $"ingredients/{to}", FromGrams = PartOf(from, number) } },
    };

    private static double PartOf(string from, int number) =>
        Loaves[0].Lines.First(line => line.Ingredient == $"ingredients/{from}").Grams - (number * LeastPart);

    /// <summary>As many checks as are answered on one stream of questions in a while.</summary>
    private static async Task<int> CheckedOnStream(QuestionService.QuestionServiceClient questions, string from, string to, TimeSpan time, Func<int> next)
    {
        using var stream = questions.AnswerQuestions();
        using var room = new SemaphoreSlim(OnTheirWay);
        var clock = Stopwatch.StartNew();
        var asking = Task.Run(async () =>
        {
            while (clock.Elapsed < time)
            {
                await room.WaitAsync();
                var check = new AskedFor { Kind = AskedFor.Types.Kind.Check, From = from, To = to, FromGrams = PartOf(from, next()) };
                await stream.RequestStream.WriteAsync(new AnswerQuestionRequest { Formula = Loaves[0], Fields = check });
            }

            await stream.RequestStream.CompleteAsync();
        });
        var answered = 0;
        while (await stream.ResponseStream.MoveNext(CancellationToken.None))
        {
            // Those that come after the time are few, and do not count.
            answered += clock.Elapsed < time ? 1 : 0;
            room.Release();
            if (stream.ResponseStream.Current.Verdict != AnswerQuestionResponse.Types.Verdict.Yes)
            {
                throw new InvalidOperationException($"a check was answered otherwise: {stream.ResponseStream.Current}");
            }
        }

        await asking;
        return answered;
    }

    private static AnswerQuestionRequest Row(int number, bool isWeighedAnew = false)
    {
        // Another name is another question: nothing comes from the answers that are kept.
        var loaf = new Formula(Loaves[number % Loaves.Length]) { DisplayName = $"Loaf {number}" };
        loaf.Lines[0].Grams += isWeighedAnew ? number * LeastGrams : 0;
        return new() { Row = number + 1, Formula = loaf, Question = Asked[number / Loaves.Length % Asked.Length] };
    }

    /// <summary>All rows on one stream, in parts; mean memory over the second and over the last fifth of them [MB], and what the parts took.</summary>
    /// <param name="service">The service.</param>
    /// <param name="questions">Its desk.</param>
    /// <param name="rows">How many are asked.</param>
    /// <param name="from">Number of the first.</param>
    /// <param name="pause">What is done after each part; its time does not count.</param>
    /// <param name="isWeighedAnew">Whether each is of another loaf.</param>
    private static async Task<(double Early, double Late, double Seconds)> Stream(
        ServiceProcess service, QuestionService.QuestionServiceClient questions, int rows, int from, Func<Task> pause, bool isWeighedAnew = false)
    {
        using var stream = questions.AnswerQuestions();
        var (megabytes, clock) = (new List<double>(), new Stopwatch());
        for (var part = 0; part < Parts; part++)
        {
            var (first, last) = (rows * part / Parts, rows * (part + 1) / Parts);
            clock.Start();
            var asking = Task.Run(async () =>
            {
                for (var row = first; row < last; row++)
                {
                    await stream.RequestStream.WriteAsync(Row(from + row, isWeighedAnew));
                }
            });
            for (var row = first; row < last; row++)
            {
                if (!await stream.ResponseStream.MoveNext(CancellationToken.None))
                {
                    throw new InvalidOperationException($"{row} of {rows} came back");
                }

                if (stream.ResponseStream.Current is { Verdict: AnswerQuestionResponse.Types.Verdict.Failed } failed)
                {
                    throw new InvalidOperationException(failed.Problem);
                }
            }

            await asking;
            clock.Stop();
            megabytes.Add(service.ResidentMegabytes);
            await pause();
        }

        await stream.RequestStream.CompleteAsync();
        return (megabytes.Skip(Parts / Looks).Take(Parts / Looks).Average(), megabytes.TakeLast(Parts / Looks).Average(), clock.Elapsed.TotalSeconds);
    }

    /// <summary>A call of callers who leave the bytes of an answer unread: what is left is the service's work and that of the wire.</summary>
    private static Func<int, Task> Unread(CallInvoker calls, string service, string method, byte[] question)
    {
        var bytes = Marshallers.Create(static (byte[] written) => written, static read => read);
        var asked = new Method<byte[], byte[]>(MethodType.Unary, service, method, bytes, bytes);
        return _ => calls.AsyncUnaryCall(asked, null, default, question).ResponseAsync;
    }

    /// <summary>Calls of several callers, as many as are answered in a while.</summary>
    private static Func<TimeSpan, Func<int>, Task<int>> Called(Func<int, Task> call)
    {
        async Task<int> Ask(TimeSpan time, Func<int> next)
        {
            var (clock, done) = (Stopwatch.StartNew(), 0);
            for (; clock.Elapsed < time; done++)
            {
                await call(next());
            }

            return done;
        }

        return async (time, next) => (await Task.WhenAll(Enumerable.Range(0, Callers).Select(_ => Ask(time, next)))).Sum();
    }

    /// <summary>Answers a second of each kind, in the order of the kinds.</summary>
    /// <param name="kinds">Each asks for a while, and counts what is answered; every question has a number of its own.</param>
    private static async Task<double[]> Rates(params Func<TimeSpan, Func<int>, Task<int>>[] kinds)
    {
        var number = 0;
        var calls = new int[kinds.Length];
        // The first round warms up.
        for (var round = 0; round <= Rounds; round++)
        {
            for (var kind = 0; kind < kinds.Length; kind++)
            {
                var done = await kinds[kind](Measured, () => Interlocked.Increment(ref number));
                calls[kind] += round == 0 ? 0 : done;
            }
        }

        return [.. calls.Select(done => done / (Rounds * Measured.TotalSeconds))];
    }
}
