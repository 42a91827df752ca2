using System.Collections.Immutable;
using System.Text;
using CsvHelper;

namespace SwapSolver.Tables.Text;

/// <summary>Cuts text into rows and fields.</summary>
internal sealed class TableRecords
{
    /// <summary>Longest row that is read [bytes].</summary>
    public const int MostBytes = 65_536;

    private readonly bool isAbbreviated;

    private readonly List<TableRecord> records = [];

    private TableRecords(bool isAbbreviated) => this.isAbbreviated = isAbbreviated;

    /// <summary>The rows of a text, without blank rows and comments.</summary>
    /// <param name="text">The text.</param>
    /// <param name="format">How it is written.</param>
    /// <param name="firstLine">Number of its first line.</param>
    public static List<TableRecord> Of(string text, TableFormat format, int firstLine)
    {
        var reading = new TableRecords(format == TableFormat.UsdaAbbreviated);
        reading.Read(text.TrimStart('\uFEFF'), firstLine, joinsLines: !reading.isAbbreviated);
        return reading.records;
    }

    /// <summary>Reads rows. One forgotten quote must not swallow the rows below it: a row of several lines whose quotes
    /// do not fit is read again, each line for itself.</summary>
    private void Read(string text, int firstLine, bool joinsLines)
    {
        CsvMalformedReason? malformed = null;
        using var reader = CsvReader.FromText(text, new CsvReaderOptions
        {
            Separator = isAbbreviated ? '^' : ',',
            Quote = isAbbreviated ? '~' : '"',
            CommentPrefix = isAbbreviated ? null : '#',
            HasHeader = false,
            TrimWhitespace = true,
            AllowLineBreaksInQuotes = joinsLines,
            TrackLineNumbers = true,
            OnMalformedRecord = record => malformed = record.Reason,
        });
        while (reader.Read())
        {
            var line = firstLine + (int)reader.LineNumber - 1;
            var raw = reader.RawRecord;
            // An inch sign within plain text is no fault.
            var isFaulty = malformed is not null and not CsvMalformedReason.StrayQuote;
            malformed = null;
            if (isFaulty && joinsLines && raw.IndexOfAny((byte)'\n', (byte)'\r') >= 0)
            {
                Read(Encoding.UTF8.GetString(raw), line, joinsLines: false);
            }
            else if (raw.Length > MostBytes)
            {
                records.Add(new TableRecord(line, [], RecordFault.TooLong));
            }
            else if (Fields(reader) is { } fields)
            {
                records.Add(new TableRecord(line, fields, isFaulty ? RecordFault.Quotes : null));
            }
        }
    }

    /// <summary>The fields; null where all are blank, as spreadsheets leave rows behind the last.</summary>
    private static ImmutableArray<string>? Fields(CsvReader reader)
    {
        var fields = ImmutableArray.CreateBuilder<string>(reader.FieldCount);
        var isBlank = true;
        for (var place = 0; place < reader.FieldCount; place++)
        {
            var field = reader.GetString(place).Trim();
            isBlank &= field.Length == 0;
            fields.Add(field);
        }

        return isBlank ? null : fields.MoveToImmutable();
    }
}
