using System.Text;

namespace TieRodCalc.Tests.Files;

/// <summary>How a file was mutated.</summary>
internal enum MutationKind
{
    Bytes,
    Structure,
    Values,
}

/// <summary>A sound file with something changed.</summary>
/// <param name="Kind">How it was changed.</param>
/// <param name="Content">Its bytes.</param>
/// <param name="PartName">The name of the part file that it is, or null where it is a job.</param>
/// <param name="Job">The job to read: the mutated one, or a sound one that reads the mutated part file.</param>
internal sealed record MutatedFile(MutationKind Kind, byte[] Content, string? PartName, byte[] Job);

/// <summary>Draws mutated files.</summary>
internal sealed class FileMutation(MutatedSources sources)
{
    /// <summary>One in so many is the whole shelf, which takes longer.</summary>
    private const int FullShelfShare = 400;

    private readonly ValueMutation _values = new(sources.Jobs.Concat(sources.Parts.Values));
    private readonly string[] _partNames = [.. sources.Parts.Keys];
    private StructureMutation? _structure;

    /// <summary>The mutated file of an index: always the same one.</summary>
    public MutatedFile Of(int index)
    {
        Random random = RandomCounts.For(index);
        string job = sources.Jobs[random.Next(sources.Jobs.Count)];
        string? part = random.Next(3) == 0 ? _partNames[random.Next(_partNames.Length)] : null;
        string source = part is null ? job : index % FullShelfShare == 0 ? sources.FullShelf : sources.Parts[part];
        MutationKind kind = (MutationKind)(index % 3);
        byte[] content = kind switch
        {
            MutationKind.Bytes => ByteMutation.Of(source, sources.Jobs[random.Next(sources.Jobs.Count)], random),
            MutationKind.Structure => Encoding.UTF8.GetBytes((_structure ??= new(_values.Keys)).Of(source, random)),
            _ => Encoding.UTF8.GetBytes(_values.Of(source, random)),
        };
        if (part is not null)
        {
            // Those of its jobs that name it.
            string[] users = [.. sources.Jobs.Where(text => text.Contains(part, StringComparison.Ordinal))];
            job = users[random.Next(users.Length)];
        }

        return new MutatedFile(kind, content, part, part is null ? content : Encoding.UTF8.GetBytes(job));
    }
}
