using System.Text;

namespace TieRodCalc.Cli;

/// <summary>Files that a command writes: whole or not at all, and none that exists unless it is said so.</summary>
internal static class OutputFile
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>Writes a file by way of a second one beside it.</summary>
    /// <returns>False where it cannot be written; that has been said then, and nothing is left behind.</returns>
    /// <exception cref="OperationCanceledException">A signal asked the program to end; nothing is left behind.</exception>
    public static bool Write(string path, string text, bool overwrite, Terminal terminal) =>
        WriteAll([(path, () => text)], overwrite, terminal);

    /// <summary>Writes files that belong together: all of them or none.</summary>
    /// <param name="files">Each with its text.</param>
    /// <param name="overwrite">Whether files that exist are overwritten.</param>
    /// <param name="terminal">Where it is said what is wrong.</param>
    /// <returns>False where one cannot be written; that has been said then, and everything is as it was before.</returns>
    /// <exception cref="OperationCanceledException">A signal asked the program to end; everything is as it was before.</exception>
    public static bool WriteAll(IReadOnlyList<(string Path, Func<string> Text)> files, bool overwrite, Terminal terminal)
    {
        if (files.Select(file => Refusal(file.Path, overwrite)).FirstOrDefault(refusal => refusal is not null) is { } refused)
        {
            terminal.Complain($"tierodcalc: {refused} Nothing was written.\n");
            return false;
        }

        using Interruption interruption = new();
        PendingFile[] pending = [.. files.Select(file => new PendingFile(RealPath(file.Path)))];
        int at = 0;
        try
        {
            for (at = 0; at < pending.Length; at++)
            {
                pending[at].Prepare(files[at].Text(), Utf8);
            }

            for (at = 0; at < pending.Length; at++)
            {
                interruption.ThrowIfAsked();
                pending[at].Place(overwrite, mayGoBack: at < pending.Length - 1);
            }

            Array.ForEach(pending, file => file.Keep());
            return true;
        }
        catch (OperationCanceledException)
        {
            TakeBack(pending);
            throw;
        }
        catch (Exception fault) when (IsOfDisk(fault))
        {
            TakeBack(pending);
            terminal.Complain($"tierodcalc: {files[at].Path} cannot be written: {pending[at].Words(fault)}\n");
            return false;
        }
    }

    /// <summary>Why nothing can be written into a folder, or null where something can.</summary>
    public static string? FaultOf(string folder)
    {
        string trial = PendingFile.NameIn(folder);
        try
        {
            using FileStream stream = new(trial, FileMode.CreateNew, FileAccess.Write, FileShare.None, 1, FileOptions.DeleteOnClose);
            return null;
        }
        catch (Exception fault) when (IsOfDisk(fault))
        {
            return fault.Message.Replace(Path.GetFullPath(trial), folder, StringComparison.Ordinal);
        }
    }

    internal static bool IsOfDisk(Exception fault) =>
        fault is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException;

    /// <summary>The file that a name leads to where it is a symbolic link, so that the link stays; otherwise the name.</summary>
    /// <exception cref="IOException">The links lead round in a circle.</exception>
    public static string RealPath(string path)
    {
        FileInfo file = new(path);
        return file.LinkTarget is null ? path : file.ResolveLinkTarget(returnFinalTarget: true)!.FullName;
    }

    /// <summary>Why no file is to be written there, as a sentence, or null.</summary>
    private static string? Refusal(string path, bool overwrite)
    {
        try
        {
            return path.Length == 0 ? "the file to be written has no name."
                : Directory.Exists(path) ? $"{path} is a folder; name a file in it."
                : !overwrite && Path.Exists(path) ? $"{path} exists; --force overwrites it."
                : Path.GetDirectoryName(RealPath(path)) is { Length: > 0 } folder && !Directory.Exists(folder)
                    ? $"{path} cannot be written: there is no folder {folder}."
                : File.Exists(RealPath(path)) && !IsFile(RealPath(path)) ? $"{path} is a device or a pipe; name a file."
                : null;
        }
        catch (Exception fault) when (IsOfDisk(fault))
        {
            return $"{path} cannot be written: {fault.Message.TrimEnd('.')}.";
        }
    }

    /// <summary>
    /// Whether it is a file, whose place another may take, and not a device or a pipe. These have no length, as an empty file has none;
    /// but the file can be given one.
    /// </summary>
    public static bool IsFile(string path)
    {
        if (new FileInfo(path).Length > 0)
        {
            return true;
        }

        using FileStream stream = new(path, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite | FileShare.Delete, bufferSize: 1);
        try
        {
            stream.SetLength(0);
            return true;
        }
        catch (Exception fault) when (IsOfDisk(fault))
        {
            return false;
        }
    }

    private static void TakeBack(PendingFile[] pending)
    {
        foreach (PendingFile file in pending.Reverse())
        {
            file.TakeBack();
        }
    }
}
