using System.Text;

namespace TieRodCalc.Fuzz;

/// <summary>A reader that is given anything.</summary>
/// <param name="Name">What it is called on the command line.</param>
/// <param name="Read">Reads an input and all that comes of it; throws where something does not hold. Whether it was sound.</param>
internal sealed record Target(string Name, Func<byte[], bool> Read)
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Target> All =>
    [
        OfText("length", ValueReaders.Length),
        OfText("thread", ThreadReader.Read),
        OfText("values", ValueReaders.Others),
        new("parts", FileReaders.Parts),
        new("job", FileReaders.Job),
        OfText("figures", Figures.Read),
        OfText("planted", PlantedFault.Read),
    ];

    private static Target OfText(string name, Func<string, bool> read) =>
        new(name, bytes => read(Encoding.UTF8.GetString(bytes)));
}
