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
        if (files.Any(file => file.Path.Length == 0))
        {
            terminal.Complain("tierodcalc: the file to be written has no name.\n");
            return false;
        }

        if (files.FirstOrDefault(file => Directory.Exists(file.Path)).Path is { } directory)
        {
            terminal.Complain($"tierodcalc: {directory} is a folder; name a file in it. Nothing was written.\n");
            return false;
        }

        if (files.FirstOrDefault(file => IsMissing(Path.GetDirectoryName(file.Path))).Path is { } lost)
        {
            terminal.Complain(
                $"tierodcalc: {lost} cannot be written: there is no folder {Path.GetDirectoryName(lost)}. Nothing was written.\n");
            return false;
        }

        if (!overwrite && files.FirstOrDefault(file => Path.Exists(file.Path)).Path is { } existing)
        {
            terminal.Complain($"tierodcalc: {existing} exists; --force overwrites it. Nothing was written.\n");
            return false;
        }

        using Interruption interruption = new();
        PendingFile[] pending = [.. files.Select(file => new PendingFile(file.Path))];
        string path = string.Empty;
        try
        {
            foreach ((PendingFile file, Func<string> text) in pending.Zip(files.Select(file => file.Text)))
            {
                path = file.Path;
                file.Prepare(text(), Utf8);
            }

            foreach (PendingFile file in pending)
            {
                path = file.Path;
                interruption.ThrowIfAsked();
                file.Place(overwrite, mayGoBack: file != pending[^1]);
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
            terminal.Complain($"tierodcalc: {path} cannot be written: {fault.Message}\n");
            return false;
        }
    }

    /// <summary>Why nothing can be written into a folder, or null where something can.</summary>
    public static string? FaultOf(string folder)
    {
        try
        {
            string trial = Path.Combine(folder, $".tierodcalc.{Environment.ProcessId}.part");
            using FileStream stream = new(trial, FileMode.CreateNew, FileAccess.Write, FileShare.None, 1, FileOptions.DeleteOnClose);
            return null;
        }
        catch (Exception fault) when (IsOfDisk(fault))
        {
            return fault.Message;
        }
    }

    internal static bool IsOfDisk(Exception fault) =>
        fault is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException;

    private static bool IsMissing(string? folder) => !string.IsNullOrEmpty(folder) && !Directory.Exists(folder);

    private static void TakeBack(PendingFile[] pending)
    {
        foreach (PendingFile file in pending.Reverse())
        {
            file.TakeBack();
        }
    }
}
