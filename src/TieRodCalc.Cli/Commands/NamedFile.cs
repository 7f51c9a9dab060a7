using System.CommandLine;

namespace TieRodCalc.Cli.Commands;

/// <summary>An option that names a file to be written, such as <c>--picture FILE</c>, and <c>--force</c> beside it.</summary>
internal sealed class NamedFile(string option, string description, bool required = false)
{
    private readonly Option<string?> _file = new(option) { Description = description, HelpName = "FILE", Required = required };

    private readonly Option<bool> _force = new("--force") { Description = "Overwrite the file where it exists." };

    /// <summary>Adds the options to a command.</summary>
    public void AddTo(Command command)
    {
        command.Add(_file);
        command.Add(_force);
        command.Validators.Add(result =>
        {
            string? path = result.GetResult(_file)?.Tokens is [{ Value: var written }, ..] ? written : null;
            if (path is { Length: 0 })
            {
                result.AddError($"{_file.Name} is followed by an empty file name.");
            }
            else if (path == JobSource.StandardInput)
            {
                result.AddError($"{_file.Name} takes the name of a file, and - is none; ./- is a file of that name.");
            }
            else if (path is not null && result.GetResult(JobSource.JobName)?.Tokens is [{ Value: var job }, ..] && IsSame(path, job))
            {
                result.AddError($"{_file.Name} names the job itself, which stays as it is; name another file.");
            }
            else if (!_file.Required && path is null && result.GetResult(_file) is null && result.GetResult(_force) is { Implicit: false })
            {
                result.AddError($"--force overwrites the file of {_file.Name}, and none is named: {_file.Name} FILE --force");
            }
        });
    }

    /// <summary>The file as it was named, or null.</summary>
    public string? Path(ParseResult parsed) => parsed.GetValue(_file);

    /// <summary>Writes the file where one is asked for.</summary>
    /// <returns>False where it cannot be written; that has been said then.</returns>
    public bool Write(ParseResult parsed, Func<string> content, Terminal terminal) =>
        parsed.GetValue(_file) is not { } path || OutputFile.Write(path, content(), parsed.GetValue(_force), terminal);

    private static bool IsSame(string path, string job)
    {
        try
        {
            return System.IO.Path.GetFullPath(OutputFile.RealPath(path)) == System.IO.Path.GetFullPath(OutputFile.RealPath(job));
        }
        catch (Exception fault) when (OutputFile.IsOfDisk(fault))
        {
            // Names that lead nowhere are told by whoever opens them.
            return false;
        }
    }
}
