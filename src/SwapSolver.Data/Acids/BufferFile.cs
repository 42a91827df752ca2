using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Acids;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Data.Acids;

/// <summary>Reads <c>chemistry/buffers.json</c>.</summary>
/// <param name="Figures">Reads its figures.</param>
/// <param name="Pantry">The ingredients.</param>
internal sealed record BufferFile(FigureReader Figures, Pantry Pantry)
{
    /// <summary>The buffers by the id of the ingredient, and what is taken for the others.</summary>
    public (ImmutableDictionary<string, FoodBuffer> Buffers, BufferGuess Guess) Read(JsonPlace root)
    {
        root.Only("about", "guess", "buffers");
        var buffers = ImmutableDictionary.CreateBuilder<string, FoodBuffer>(StringComparer.Ordinal);
        foreach (var place in root.Get("buffers").Items)
        {
            place.Only("ingredient", "nativePh", "meqPer100G");
            var id = place.Get("ingredient");
            if (!Pantry.TryGet(id.Text, out _))
            {
                throw id.Fault($"'{id.Text}' is not an ingredient of the pantry");
            }

            if (!buffers.TryAdd(id.Text, new FoodBuffer(PhOf(place), Figures.Read(place.Get("meqPer100G"), "meqPer100G", 0, 200))))
            {
                throw id.Fault($"'{id.Text}' stands twice; keep one");
            }
        }

        var guess = root.Get("guess").Only("nativePh", "meqPerGProtein");
        return (buffers.ToImmutable(), new BufferGuess(PhOf(guess), Figures.Read(guess.Get("meqPerGProtein"), "meqPerGProtein", 0, 10)));
    }

    private Figure PhOf(JsonPlace place) => Figures.Read(place.Get("nativePh"), "nativePh", 2, 11);
}
