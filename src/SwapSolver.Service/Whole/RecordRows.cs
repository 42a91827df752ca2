using Google.Protobuf;
using Google.Protobuf.WellKnownTypes;
using SwapSolver.Records.Formulas;
using SwapSolver.Records.Keys;
using SwapSolver.Records.Trials;
using SwapSolver.Records.Whole;
using SwapSolver.Service.Stored;
using SwapSolver.V1;

namespace SwapSolver.Service.Whole;

/// <summary>Rows of the records in the contract's words, and back.</summary>
internal static class RecordRows
{
    private static readonly JsonParser Parser = new(JsonParser.Settings.Default);

    /// <summary>A row in the contract's words.</summary>
    public static Record Write(RecordRow row) => row switch
    {
        RecordRow.Food food => new Record { OwnFood = new OwnFood { Id = food.Id, Document = food.Document } },
        RecordRow.Measured one => new Record { MeasuredFigure = new MeasuredFigure { Ingredient = one.Ingredient, Fact = one.Fact, Low = one.Low, Typical = one.Typical, High = one.High, Method = one.Method } },
        RecordRow.Weight one => new Record { SpoonWeight = new SpoonWeight { Ingredient = one.Ingredient, Measure = one.Measure, Amount = one.Amount, Grams = one.Grams, Source = one.Source } },
        RecordRow.Formula { Head: var head } => new Record
        {
            FormulaState = new FormulaState
            {
                Id = head.Id,
                DisplayName = head.DisplayName,
                Newest = (int)head.Newest,
                Published = (int)(head.Published ?? 0),
                Edition = (int)head.Edition,
                Etag = head.Etag,
                CreateTime = Moment.Read(head.Created),
                UpdateTime = Moment.Read(head.Updated),
                DeleteTime = Moment.Read(head.Deleted),
            },
        },
        RecordRow.OneRevision { Revision: var revision } => new Record
        {
            SavedRevision = new SavedRevision
            {
                FormulaId = revision.Formula,
                Number = (int)revision.Number,
                Formula = FormulaDocument.Read(revision.Document),
                Note = revision.Note,
                Goals = { Stored.Goals.Read(revision.Goals) },
                CreateTime = Moment.Read(revision.Created),
            },
        },
        RecordRow.OneTrial { Trial: var trial } => new Record
        {
            SavedTrial = new SavedTrial { FormulaId = trial.Formula, Number = (int)trial.Number, Trial = Bare(TrialDocument.Read(trial)), CreateTime = Moment.Read(trial.Created) },
        },
        RecordRow.OneChoice { Choice: var choice } => new Record
        {
            SavedChoice = new SavedChoice { Fact = choice.Fact, IsOff = choice.IsOff == 1, ForgottenBefore = Moment.Read(choice.ForgottenBefore.Length == 0 ? null : choice.ForgottenBefore) },
        },
        RecordRow.OneKey { Key: var key } => new Record
        {
            SavedKey = new SavedKey
            {
                Id = key.Id,
                DisplayName = key.DisplayName,
                Role = key.Role,
                Salt = key.Salt,
                Hash = key.Hash,
                CreateTime = Moment.Read(key.Created),
                RevokeTime = Moment.Read(key.Revoked),
            },
        },
        _ => throw new InvalidOperationException($"{row.GetType().Name} has no words"),
    };

    /// <summary>The row of a record; null where it says nothing.</summary>
    /// <exception cref="FormatException">It cannot be.</exception>
    public static RecordRow? Read(Record record) => record.KindCase switch
    {
        Record.KindOneofCase.OwnFood => new RecordRow.Food(Required(record.OwnFood.Id), record.OwnFood.Document),
        Record.KindOneofCase.MeasuredFigure => Read(record.MeasuredFigure),
        Record.KindOneofCase.SpoonWeight => Read(record.SpoonWeight),
        Record.KindOneofCase.FormulaState => new RecordRow.Formula(Read(record.FormulaState)),
        Record.KindOneofCase.SavedRevision => new RecordRow.OneRevision(Read(record.SavedRevision)),
        Record.KindOneofCase.SavedTrial => new RecordRow.OneTrial(Read(record.SavedTrial)),
        Record.KindOneofCase.SavedChoice => new RecordRow.OneChoice(new LearnedChoice(
            Required(record.SavedChoice.Fact), record.SavedChoice.IsOff ? 1 : 0, record.SavedChoice.ForgottenBefore is { } then ? Moment.Write(then) : string.Empty)),
        Record.KindOneofCase.SavedKey => new RecordRow.OneKey(Read(record.SavedKey)),
        _ => null,
    };

    /// <summary>A line of an export.</summary>
    public static string WriteLine(Record record) => JsonFormatter.Default.Format(record);

    /// <summary>The record of a line.</summary>
    /// <exception cref="InvalidProtocolBufferException">It is none.</exception>
    /// <exception cref="InvalidJsonException">It is no JSON.</exception>
    public static Record ReadLine(string line) => Parser.Parse<Record>(line);

    private static RecordRow.Measured Read(MeasuredFigure one) => new(Required(one.Ingredient), Required(one.Fact), one.Low, one.Typical, one.High, one.Method);

    private static RecordRow.Weight Read(SpoonWeight one) => new(Required(one.Ingredient), Required(one.Measure), Required(one.Amount), one.Grams, one.Source);

    private static FormulaHead Read(FormulaState state) => new(
        Required(state.Id), Required(state.DisplayName), state.Newest, state.Published == 0 ? null : state.Published, state.Edition, Required(state.Etag),
        At(state.CreateTime), At(state.UpdateTime), state.DeleteTime is { } deleted ? Moment.Write(deleted) : null);

    private static Revision Read(SavedRevision revision) => new(
        Required(revision.FormulaId), revision.Number, FormulaDocument.Write(revision.Formula ?? throw new FormatException("the formula is missing")), revision.Note,
        Stored.Goals.Write(revision.Goals), At(revision.CreateTime));

    private static StoredTrial Read(SavedTrial trial) => new(
        Required(trial.FormulaId), trial.Number, trial.Trial?.Revision ?? 0, TrialDocument.Write(trial.Trial ?? throw new FormatException("the trial is missing")), At(trial.CreateTime));

    private static StoredKey Read(SavedKey key) => new(
        Required(key.Id), key.DisplayName, System.Enum.TryParse<Access.Role>(key.Role, out _) ? key.Role : throw new FormatException($"'{key.Role}' is no role"),
        Required(key.Salt), Required(key.Hash), At(key.CreateTime), key.RevokeTime is { } revoked ? Moment.Write(revoked) : null);

    private static Trial Bare(Trial trial) => new(trial) { Name = string.Empty, CreateTime = null };

    private static string At(Timestamp? moment) => moment is null ? throw new FormatException("a moment is missing") : Moment.Write(moment);

    private static string Required(string text) => text.Length > 0 ? text : throw new FormatException("an id or a name is missing");
}
