using System.CommandLine;
using TieRodCalc.Cli.Rendering;

namespace TieRodCalc.Cli.Commands;

/// <summary><c>completion SHELL</c>: the script by which a shell completes this program's command lines.</summary>
internal static class CompletionCommand
{
    private static readonly Dictionary<string, string> s_scripts = new(StringComparer.Ordinal)
    {
        ["bash"] = CompletionScripts.Bash,
        ["zsh"] = CompletionScripts.Zsh,
        ["fish"] = CompletionScripts.Fish,
        ["powershell"] = CompletionScripts.PowerShell,
    };

    public static Command Make(Terminal terminal)
    {
        Argument<string> shell = new("SHELL") { Description = $"One of {string.Join(", ", s_scripts.Keys)}." };
        shell.CompletionSources.Add([.. s_scripts.Keys]);
        shell.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: var written }] && !s_scripts.ContainsKey(written))
            {
                result.AddError(written is ['-', _, ..]
                    ? UsageErrors.NoSuchOption(written, result)
                    : $"there is no script for a shell '{written}'; there is one for {string.Join(", ", s_scripts.Keys)}."
                        + Suggestion.Of(written, s_scripts.Keys));
            }
        });
        Command command = new(
            "completion",
            "Print the script by which a shell completes command lines at the tab key.\n"
            + "It completes commands, options, their values, files, the rods of a job and the remedies of its plan. To have it in every "
            + "new shell:\n"
            + "bash, in ~/.bashrc: source <(tierodcalc completion bash)\n"
            + "zsh, in ~/.zshrc after compinit: source <(tierodcalc completion zsh)\n"
            + "fish: tierodcalc completion fish > ~/.config/fish/completions/tierodcalc.fish\n"
            + "PowerShell, in $PROFILE: tierodcalc completion powershell | Out-String | iex\n"
            + "Example: tierodcalc completion bash")
        {
            shell,
        };
        command.SetAction(parsed => terminal.Write(s_scripts[parsed.GetValue(shell)!]) ?? ExitStatus.Holds);
        return command;
    }
}
