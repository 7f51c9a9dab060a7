using System.Text;

namespace TieRodCalc.Cli;

/// <summary>A file on its way to its place: written beside it, then moved there; whatever was there can be put back.</summary>
internal sealed class PendingFile(string path)
{
    private readonly string _beside = NameIn(Path.GetDirectoryName(path)) + ".part";
    private readonly string _before = NameIn(Path.GetDirectoryName(path)) + ".before";
    private bool _placed;

    /// <summary>A name for a file of our own in a folder: never that of another run, and short, so that any name beside it will do.</summary>
    public static string NameIn(string? folder) =>
        Path.Combine(folder ?? string.Empty, $".tierodcalc.{Path.GetRandomFileName()}");

    /// <summary>Writes the text beside the place, and through to the disk, which may find only then that it is full.</summary>
    public void Prepare(string text, Encoding encoding)
    {
        using FileStream stream = new(_beside, FileMode.CreateNew, FileAccess.Write, FileShare.None, bufferSize: 1);
        stream.Write(encoding.GetBytes(text));
        stream.Flush(flushToDisk: true);
    }

    /// <summary>Moves it to its place.</summary>
    /// <param name="overwrite">Whether a file that is there is overwritten.</param>
    /// <param name="mayGoBack">Whether that one is kept aside, since another file is still to be placed.</param>
    public void Place(bool overwrite, bool mayGoBack)
    {
        if (overwrite && mayGoBack && File.Exists(path))
        {
            File.Copy(path, _before);
        }

        File.Move(_beside, path, overwrite);
        _placed = true;
    }

    /// <summary>Gives up what was there before.</summary>
    public void Keep() => Quietly(() => File.Delete(_before));

    /// <summary>Puts everything back as it was before.</summary>
    public void TakeBack()
    {
        Quietly(() => File.Delete(_beside));
        if (File.Exists(_before))
        {
            Quietly(() => File.Move(_before, path, overwrite: true));
        }
        else if (_placed)
        {
            Quietly(() => File.Delete(path));
        }
    }

    /// <summary>What a fault says, of the place instead of the file beside it, of which nobody knows.</summary>
    public string Words(Exception fault) => fault.Message
        .Replace(Path.GetFullPath(_beside), path, StringComparison.Ordinal)
        .Replace(Path.GetFullPath(_before), path, StringComparison.Ordinal);

    private static void Quietly(Action action)
    {
        try
        {
            action();
        }
        catch (Exception fault) when (OutputFile.IsOfDisk(fault))
        {
            // What was not written cannot be removed either; the first fault is the one to tell.
        }
    }
}
