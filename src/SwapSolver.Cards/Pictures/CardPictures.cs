using System.Collections.Immutable;
using SwapSolver.Cards.Texts;

namespace SwapSolver.Cards.Pictures;

/// <summary>The pictures of a card.</summary>
/// <param name="Room">What cards are printed with.</param>
internal sealed record CardPictures(CardRoom Room)
{
    /// <summary>Those that have something to show.</summary>
    public ImmutableArray<Picture> Of(Card card)
    {
        var words = new CardWords(Room.Phrases, Room.Dials, card.Locale);
        return
        [
            .. new[] { new ReadingsPicture(words).Of(card.Readings), new NetCarbohydratePicture(words, card.NetCarbohydrate).Of(card.Formula) }.OfType<Picture>(),
        ];
    }
}
