using System.Text;

namespace TieRodCalc.Fuzz;

/// <summary>A reader that is given anything.</summary>
/// <param name="Name">What it is called on the command line.</param>
/// <param name="IsFile">Whether it reads whole files, not single values.</param>
/// <param name="Read">Reads an input and all that comes of it; throws where something does not hold. Whether it was sound.</param>
internal sealed record Target(string Name, bool IsFile, Func<byte[], bool> Read)
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Target> All =>
    [
        OfText("length", ValueReaders.Length),
        OfText("thread", ThreadReader.Read),
        OfText("values", ValueReaders.Others),
        new("parts", IsFile: true, FileReaders.Parts),
        new("job", IsFile: true, FileReaders.Job),
        OfText("planted", PlantedFault.Read),
    ];

    private static Target OfText(string name, Func<string, bool> read) =>
        new(name, IsFile: false, bytes => read(Encoding.UTF8.GetString(bytes)));
}
