using System.Buffers;

namespace TieRodCalc.Cli.Dialog;

/// <summary>The questions what the two files are called.</summary>
internal sealed class FileQuestions(string folder, bool overwrite)
{
    /// <summary>What a name cannot hold on one system or another.</summary>
    private static readonly SearchValues<char> NotInNames = SearchValues.Create("/\\:*?\"<>|");

    private static readonly string[] Endings = [".yaml", ".yml"];

    /// <summary>The key of the part file's name.</summary>
    public const string Parts = "parts";

    /// <summary>The key of the job file's name.</summary>
    public const string Job = "job";

    /// <summary>Both of them.</summary>
    public Question[] All =>
    [
        new(Job, "job file")
        {
            What = $"The name of the job file. It goes into {Where}.",
            Default = scope => $"{Base(scope)}.yaml",
            Refuse = (_, answer) => Fault(answer),
            IsWritten = false,
        },
        new(Parts, "part file")
        {
            What = "The name of the part file, beside it. This is the last question; both files are written then.",
            Default = scope => Path.GetFileNameWithoutExtension(scope[Job]) + "-parts.yaml",
            Refuse = (scope, answer) => answer.Equals(scope[Job], StringComparison.OrdinalIgnoreCase)
                ? "that is the job file"
                : Fault(answer),
            IsWritten = false,
        },
    ];

    private string Where => folder.Length == 0 ? "the current folder" : folder;

    private static string Base(Scope scope) => Slug.Of(scope.At("job")["job"] ?? string.Empty) is { Length: > 0 } slug ? slug : "job";

    private string? Fault(string name)
    {
        if (name.AsSpan().ContainsAny(NotInNames))
        {
            return "a name alone, without folder: --folder says where the files go";
        }

        if (!Endings.Any(ending => name.Length > ending.Length && name.EndsWith(ending, StringComparison.Ordinal)))
        {
            return "the name must end in .yaml";
        }

        string path = Path.Combine(folder, name);
        return Directory.Exists(path) ? $"{path} is a folder"
            : !overwrite && File.Exists(path) ? $"{path} exists; take another name, or start again with --force"
            : null;
    }
}
