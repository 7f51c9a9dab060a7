namespace TieRodCalc.Yaml;

/// <summary>Reads part and job files.</summary>
public static class JobReader
{
    /// <summary>Reads a job file and the part files that it names.</summary>
    /// <param name="path">The file; its part files are relative to its folder.</param>
    public static Reading<Job> Read(string path) => throw new NotImplementedException();

    /// <summary>Reads a job from a stream.</summary>
    /// <param name="content">The bytes of the file; read to the end, not closed.</param>
    /// <param name="name">What to call it in problems.</param>
    /// <param name="folder">The folder that its part files are relative to.</param>
    public static Reading<Job> Read(Stream content, string name, string folder) => throw new NotImplementedException();

    /// <summary>Reads a part file.</summary>
    /// <param name="path">The file.</param>
    public static Reading<PartCatalog> ReadParts(string path) => throw new NotImplementedException();

    /// <summary>Whether a file is a job or a part file, and every problem in it and in the part files that it names.</summary>
    /// <param name="path">The file.</param>
    public static CheckedFile Check(string path) => throw new NotImplementedException();

    /// <summary>The same for a stream.</summary>
    /// <param name="content">The bytes of the file; read to the end, not closed.</param>
    /// <param name="name">What to call it in problems.</param>
    /// <param name="folder">The folder that its part files are relative to.</param>
    public static CheckedFile Check(Stream content, string name, string folder) => throw new NotImplementedException();
}

/// <summary>What came of checking a file: the job or the parts that it holds, neither where it has problems.</summary>
/// <param name="Job">The job, or null.</param>
/// <param name="Parts">The parts, or null.</param>
/// <param name="Problems">Every problem.</param>
/// <param name="Notes">Keys that were read and are not used yet.</param>
public sealed record CheckedFile(Job? Job, PartCatalog? Parts, IReadOnlyList<Problem> Problems, IReadOnlyList<Problem> Notes);
