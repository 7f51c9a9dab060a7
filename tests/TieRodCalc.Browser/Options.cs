namespace TieRodCalc.Browser;

/// <summary>What the command line asks for.</summary>
internal sealed record Options
{
    public const string Usage =
        """
        --command PATH [--out FOLDER] [--png] [--browser PROGRAM] JOB…
            makes the bench sheet of each job with the built command (a program or a DLL), prints it and checks it
        --self
            shows on small broken pages that every check can fail
        """;

    public bool Self { get; private init; }

    /// <summary>The command that makes sheets.</summary>
    public string Command { get; private init; } = string.Empty;

    /// <summary>Takes the sheets and what was printed of them.</summary>
    public string Folder { get; private init; } = "artifacts/sheets";

    /// <summary>Whether pictures of the printed pages are made too, by the program pdftoppm.</summary>
    public bool Pictures { get; private init; }

    public string Browser { get; private init; } = "chromium";

    public IReadOnlyList<string> Jobs { get; private init; } = [];

    /// <summary>The options, or null where they are not understood.</summary>
    public static Options? Parse(IEnumerable<string> arguments)
    {
        Options options = new();
        Queue<string> rest = new(arguments);
        while (rest.TryDequeue(out string? word))
        {
            Options? next = word switch
            {
                "--self" => options with { Self = true },
                "--png" => options with { Pictures = true },
                "--command" when rest.TryDequeue(out string? value) => options with { Command = value },
                "--out" when rest.TryDequeue(out string? value) => options with { Folder = value },
                "--browser" when rest.TryDequeue(out string? value) => options with { Browser = value },
                ['-', ..] => null,
                _ => options with { Jobs = [.. options.Jobs, word] },
            };
            if (next is null)
            {
                return null;
            }

            options = next;
        }

        bool sheets = options.Command.Length > 0 && options.Jobs.Count > 0;
        bool neither = options.Command.Length == 0 && options.Jobs.Count == 0;
        return sheets || (neither && options.Self) ? options : null;
    }
}
