namespace TieRodCalc.Browser;

/// <summary>Files that are built into this program.</summary>
internal static class Resource
{
    public static string Text(string name)
    {
        using Stream stream = typeof(Resource).Assembly.GetManifestResourceStream(name)
            ?? throw new ArgumentException($"no such file in this program: {name}", nameof(name));
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }
}
