using System.Text;

namespace TieRodCalc.Cli;

/// <summary>Files that a command writes: whole or not at all, and none that exists unless it is said so.</summary>
internal static class OutputFile
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>Writes a file by way of a second one beside it.</summary>
    /// <returns>False where it cannot be written; that has been said then, and nothing is left behind.</returns>
    public static bool Write(string path, string text, bool overwrite, Terminal terminal)
    {
        if (path.Length == 0)
        {
            terminal.Complain("tierodcalc: the file to be written has no name.\n");
            return false;
        }

        if (!overwrite && Path.Exists(path))
        {
            terminal.Complain($"tierodcalc: {path} exists; --force overwrites it. Nothing was written.\n");
            return false;
        }

        string beside = $"{path}.{Environment.ProcessId}.part";
        try
        {
            File.WriteAllText(beside, text, Utf8);
            File.Move(beside, path, overwrite);
            return true;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            Remove(beside);
            terminal.Complain($"tierodcalc: {path} cannot be written: {fault.Message}\n");
            return false;
        }
    }

    private static void Remove(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            // What was not written cannot be removed either; the first fault is the one to tell.
        }
    }
}
