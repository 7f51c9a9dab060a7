namespace TieRodCalc.Tests.Yaml;

/// <summary>A folder that is gone after the test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    private readonly string _path = Directory.CreateTempSubdirectory("tierodcalc-").FullName;

    public string At(string name) => Path.Combine(_path, name);

    public string Write(string name, string text)
    {
        string path = At(name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    public void Dispose() => Directory.Delete(_path, recursive: true);
}
