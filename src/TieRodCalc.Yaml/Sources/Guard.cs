using System.Security;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace TieRodCalc.Yaml.Sources;

/// <summary>The bytes of a file, or why there are none.</summary>
/// <param name="Content">The bytes.</param>
/// <param name="Fault">What is wrong, in one sentence; null where the file was read.</param>
/// <param name="Opened">False where there is nothing by that name that could be opened.</param>
internal readonly record struct FileBytes(ReadOnlyMemory<byte> Content, string? Fault, bool Opened);

/// <summary>The one place where exceptions of the disk and of the YAML parser become values.</summary>
internal static class Guard
{
    /// <summary>The largest file that is read, 8 MiB.</summary>
    public const int LargestFile = 8 * 1024 * 1024;

    private const string NoSuchFile = "there is no such file";
    private const string TooLarge = "the file is larger than 8 MiB";

    /// <summary>Reads a file.</summary>
    /// <remarks>
    /// A pipe or device is never opened, since opening it can wait forever. It is told from a file by its size, which is
    /// zero; so is that of an empty file, which has no content to read either.
    /// </remarks>
    public static FileBytes ReadFile(string path)
    {
        try
        {
            if (Directory.Exists(path))
            {
                return NotOpened("this is a folder, not a file");
            }

            FileInfo file = new(path);
            FileSystemInfo? real = file.LinkTarget is null ? file : file.ResolveLinkTarget(returnFinalTarget: true);
            if (real is not FileInfo { Exists: true } target)
            {
                return NotOpened(NoSuchFile);
            }

            if (target.Attributes.HasFlag(FileAttributes.Device) || target.Length == 0)
            {
                return new FileBytes(default, "the file is empty (or is a device or a pipe, which are not read by name); "
                    + $"{JobVersion.Wanted}", true);
            }

            if (target.Length > LargestFile)
            {
                return new FileBytes(default, TooLarge, true);
            }

            using FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, bufferSize: 1);
            return ReadAll(stream, (int)target.Length);
        }
        catch (Exception exception) when (IsOfDisk(exception))
        {
            return NotOpened(Sentence(exception));
        }
    }

    /// <summary>Reads a stream to its end.</summary>
    public static FileBytes ReadStream(Stream stream)
    {
        try
        {
            return ReadAll(stream, 0);
        }
        catch (Exception exception) when (IsOfDisk(exception))
        {
            return NotOpened(Sentence(exception));
        }
    }

    /// <summary>The files of a folder, by name in ordinal order, or a fault; nothing below the folder, nothing hidden.</summary>
    public static (IReadOnlyList<string> Names, string? Fault) ListFolder(string path)
    {
        try
        {
            List<string> names = [];
            foreach (string file in Directory.EnumerateFiles(path))
            {
                names.Add(Path.GetFileName(file));
            }

            names.Sort(StringComparer.Ordinal);
            return (names, null);
        }
        catch (Exception exception) when (IsOfDisk(exception))
        {
            return ([], Sentence(exception));
        }
    }

    /// <summary>The full path of a file, by which two names of one file are told; the name itself where it has none.</summary>
    public static string FullPath(string path)
    {
        try
        {
            return Path.GetFullPath(path);
        }
        catch (Exception exception) when (IsOfDisk(exception))
        {
            return path;
        }
    }

    /// <summary>The name that problems show for a file: without the detours of a relative path, where it has any.</summary>
    public static string ShownName(string path)
    {
        try
        {
            return Path.IsPathRooted(path) ? Path.GetFullPath(path) : Path.GetRelativePath(".", path);
        }
        catch (Exception exception) when (IsOfDisk(exception))
        {
            return path;
        }
    }

    /// <summary>The next event of a YAML document, null at its end or where a fault ends it.</summary>
    /// <param name="parser">The parser.</param>
    /// <param name="fault">
    /// The fault, or null. Of <see cref="YamlException"/> it has a place; of any other type, which the parser throws on some
    /// broken documents, it has none.
    /// </param>
    public static ParsingEvent? Next(IParser parser, out Exception? fault)
    {
        try
        {
            fault = null;
            return parser.MoveNext() ? parser.Current : null;
        }
        catch (Exception exception) when (exception is not OutOfMemoryException)
        {
            fault = exception;
            return null;
        }
    }

    private static FileBytes ReadAll(Stream stream, int expected)
    {
        using MemoryStream content = new(expected);
        byte[] part = new byte[Math.Clamp(expected + 1, 4096, 1 << 16)];
        int count;
        while ((count = stream.Read(part)) > 0)
        {
            content.Write(part, 0, count);
            if (content.Length > LargestFile)
            {
                return new FileBytes(default, TooLarge, true);
            }
        }

        return new FileBytes(content.GetBuffer().AsMemory(0, (int)content.Length), null, true);
    }

    private static bool IsOfDisk(Exception exception) =>
        exception is IOException or UnauthorizedAccessException or SecurityException or NotSupportedException or ArgumentException;

    private static FileBytes NotOpened(string fault) => new(default, fault, false);

    private static string Sentence(Exception exception) => exception switch
    {
        FileNotFoundException or DirectoryNotFoundException => NoSuchFile,
        UnauthorizedAccessException or SecurityException => "there is no permission to read it",
        PathTooLongException => "its name is too long",
        ArgumentException or NotSupportedException => "this cannot be the name of a file",
        _ => "it cannot be read: " + exception.Message.TrimEnd('.'),
    };
}
