using System.Text;

namespace TieRodCalc.Cli;

/// <summary>A file on its way to its place: written beside it, then moved there; whatever was there can be put back.</summary>
internal sealed class PendingFile(string path)
{
    private readonly string _beside = $"{path}.{Environment.ProcessId}.part";
    private readonly string _before = $"{path}.{Environment.ProcessId}.before";
    private bool _placed;

    /// <summary>Where it shall stand.</summary>
    public string Path => path;

    /// <summary>Writes the text beside the place.</summary>
    public void Prepare(string text, Encoding encoding) => File.WriteAllText(_beside, text, encoding);

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
