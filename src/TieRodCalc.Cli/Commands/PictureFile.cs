using System.CommandLine;

namespace TieRodCalc.Cli.Commands;

/// <summary>The options <c>--picture FILE</c> and <c>--force</c> of a command that can draw what it computed.</summary>
internal sealed class PictureFile(string description)
{
    private readonly Option<string?> _file = new("--picture") { Description = description, HelpName = "FILE" };

    private readonly Option<bool> _force = new("--force") { Description = "Overwrite the file where it exists." };

    /// <summary>Adds the options to a command.</summary>
    public void AddTo(Command command)
    {
        command.Add(_file);
        command.Add(_force);
    }

    /// <summary>Writes the picture where one is asked for.</summary>
    /// <returns>False where it cannot be written; that has been said then.</returns>
    public bool Write(ParseResult parsed, Func<string> picture, Terminal terminal) =>
        parsed.GetValue(_file) is not { } path || OutputFile.Write(path, picture(), parsed.GetValue(_force), terminal);
}
