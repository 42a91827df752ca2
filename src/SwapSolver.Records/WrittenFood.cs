using System.Buffers;
using System.Text;
using System.Text.Json;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Records;

/// <summary>A food as it stands in the records. Its head is read at once; the figures are read when somebody asks for the
/// food: of a table's thousands a question needs a handful.</summary>
public sealed class WrittenFood
{
    private readonly Lazy<StatedFood> food;

    private WrittenFood(string id, string document, string name, FoodOrigin origin, bool saysWhatItDoes)
    {
        Id = id;
        Document = document;
        Name = name;
        Origin = origin;
        SaysWhatItDoes = saysWhatItDoes;
        food = new(() => FoodDocument.Read(Id, Document));
    }

    /// <summary>Its id.</summary>
    public string Id { get; }

    /// <summary>Its plain name.</summary>
    public string Name { get; }

    /// <summary>Where its figures were read.</summary>
    public FoodOrigin Origin { get; }

    /// <summary>Whether it says what it is like, or what it does in a formula.</summary>
    public bool SaysWhatItDoes { get; }

    /// <summary>The whole food.</summary>
    public StatedFood Food => food.Value;

    /// <summary>Its own words: where these are the same, it is the same food.</summary>
    internal string Document { get; }

    /// <summary>A food by its own words. They are read up to the figures, before which a document says everything else that
    /// is asked for here.</summary>
    internal static WrittenFood Of(string id, string document)
    {
        var bytes = ArrayPool<byte>.Shared.Rent(Encoding.UTF8.GetMaxByteCount(document.Length));
        try
        {
            return Of(id, document, bytes.AsSpan(0, Encoding.UTF8.GetBytes(document, bytes)));
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(bytes);
        }
    }

    private static WrittenFood Of(string id, string document, ReadOnlySpan<byte> bytes)
    {
        var reader = new Utf8JsonReader(bytes);
        var (name, origin, saysWhatItDoes) = (string.Empty, FoodOrigin.Table, false);
        while (reader.Read())
        {
            if (reader.TokenType != JsonTokenType.PropertyName)
            {
                continue;
            }

            var property = reader.GetString();
            if (property == nameof(FoodDocument.Figures))
            {
                break;
            }

            reader.Read();
            switch (property)
            {
                case nameof(FoodDocument.Name):
                    name = reader.GetString()!;
                    break;
                case nameof(FoodDocument.Origin):
                    origin = Enum.Parse<FoodOrigin>(reader.GetString()!);
                    break;
                case nameof(FoodDocument.Like) or nameof(FoodDocument.Role):
                    saysWhatItDoes |= reader.TokenType != JsonTokenType.Null;
                    break;
                default:
                    reader.Skip();
                    break;
            }
        }

        return new WrittenFood(id, document, name, origin, saysWhatItDoes);
    }
}
