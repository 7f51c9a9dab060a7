using TieRodCalc.Yaml.Binding;
using TieRodCalc.Yaml.Sources;

namespace TieRodCalc.Yaml;

/// <summary>Reads part and job files.</summary>
/// <remarks>
/// Nothing here throws because of what a file holds or of how the disk answers: that becomes a <see cref="Problem"/>. Every
/// problem of a file is reported at once, but for a fault of YAML itself, which ends the file. A device or pipe is not
/// read by name; its content can be given as a stream.
/// </remarks>
public static class JobReader
{
    /// <summary>Reads a job file and the part files that it names.</summary>
    /// <param name="path">The file; its part files are relative to its folder.</param>
    /// <exception cref="ArgumentNullException">There is no path.</exception>
    public static Reading<Job> Read(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return ReadJob(LoadedFile.Load(path, Guard.ReadFile(path)), FolderOf(path));
    }

    /// <summary>Reads a job from a stream.</summary>
    /// <param name="content">The bytes of the file; read to the end, not closed. More than 8 MiB are a problem and are not read.</param>
    /// <param name="name">What to call it in problems.</param>
    /// <param name="folder">The folder that its part files are relative to.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static Reading<Job> Read(Stream content, string name, string folder)
    {
        ArgumentNullException.ThrowIfNull(content);
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(folder);
        return ReadJob(LoadedFile.Load(name, Guard.ReadStream(content)), folder);
    }

    /// <summary>Reads a part file.</summary>
    /// <param name="path">The file.</param>
    /// <exception cref="ArgumentNullException">There is no path.</exception>
    public static Reading<PartCatalog> ReadParts(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        LoadedFile file = LoadedFile.Load(path, Guard.ReadFile(path));
        PartCatalog? catalog = null;
        if (file.JobKey is { } key)
        {
            file.Findings.Problem(key.Span, "this is a job, not a part file");
        }
        else
        {
            catalog = Parts(file);
        }

        (List<Problem> problems, List<Problem> notes) = Found([file]);
        return new Reading<PartCatalog>(catalog, problems, notes);
    }

    /// <summary>Whether a file is a job or a part file, and every problem in it and in the part files that it names.</summary>
    /// <param name="path">The file.</param>
    /// <exception cref="ArgumentNullException">There is no path.</exception>
    public static CheckedFile Check(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return Checked(LoadedFile.Load(path, Guard.ReadFile(path)), FolderOf(path));
    }

    /// <summary>The same for a stream.</summary>
    /// <param name="content">The bytes of the file; read to the end, not closed. More than 8 MiB are a problem and are not read.</param>
    /// <param name="name">What to call it in problems.</param>
    /// <param name="folder">The folder that its part files are relative to.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static CheckedFile Check(Stream content, string name, string folder)
    {
        ArgumentNullException.ThrowIfNull(content);
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(folder);
        return Checked(LoadedFile.Load(name, Guard.ReadStream(content)), folder);
    }

    private static Reading<Job> ReadJob(LoadedFile file, string folder)
    {
        Job? job = null;
        List<LoadedFile> files = [file];
        if (file.JobKey is not null)
        {
            job = JobBinder.Bind(file, folder, out files);
        }
        else if (file.Root is { Whole: true } root)
        {
            file.Findings.Problem(root.Span, "this is a part file: it has neither 'job' nor 'rods', so there is no rod to plan");
        }

        (List<Problem> problems, List<Problem> notes) = Found(files);
        return new Reading<Job>(job, problems, notes);
    }

    private static CheckedFile Checked(LoadedFile file, string folder)
    {
        if (file.JobKey is not null)
        {
            Job? job = JobBinder.Bind(file, folder, out List<LoadedFile> files);
            (List<Problem> all, List<Problem> allNotes) = Found(files);
            return new CheckedFile(job, null, all, allNotes);
        }

        PartCatalog? parts = Parts(file);
        (List<Problem> problems, List<Problem> notes) = Found([file]);
        return new CheckedFile(null, parts, problems, notes);
    }

    /// <summary>The parts of a part file by itself, or null where it has problems.</summary>
    private static PartCatalog? Parts(LoadedFile file)
    {
        PartTables tables = PartTables.Of([file], whole: true);
        return file.Findings.Count == 0 ? tables.ToCatalog() : null;
    }

    private static (List<Problem> Problems, List<Problem> Notes) Found(List<LoadedFile> files)
    {
        List<Problem> problems = [];
        List<Problem> notes = [];
        foreach (LoadedFile file in files)
        {
            file.Findings.AddTo(file.Source, problems, notes);
        }

        return (problems, notes);
    }

    private static string FolderOf(string path) => Path.GetDirectoryName(path) ?? string.Empty;
}

/// <summary>What came of checking a file: the job or the parts that it holds, neither where it has problems.</summary>
/// <param name="Job">The job, or null.</param>
/// <param name="Parts">The parts, or null.</param>
/// <param name="Problems">Every problem.</param>
/// <param name="Notes">What is no error and worth knowing, such as a key that changes nothing.</param>
public sealed record CheckedFile(Job? Job, PartCatalog? Parts, IReadOnlyList<Problem> Problems, IReadOnlyList<Problem> Notes);
