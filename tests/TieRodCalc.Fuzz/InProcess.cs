using System.Text;
using TieRodCalc.Cli;

namespace TieRodCalc.Fuzz;

/// <summary>The command line, run in this process.</summary>
internal static class InProcess
{
    /// <summary>What no figure is printed as.</summary>
    private static readonly string[] s_noNumbers = ["NaN", "Infinity", "\u221E"];

    /// <summary>Runs a command: it ends with a status of its own, and prints a result with that status alone which has one.</summary>
    /// <param name="input">Standard input.</param>
    /// <param name="words">The command line.</param>
    public static void Run(byte[] input, params string[] words)
    {
        using MemoryStream standardInput = new(input);
        using MemoryStream output = new();
        using MemoryStream error = new();
        int status = Application.Run(words, new Terminal(() => standardInput, output, error));
        string command = string.Join(' ', words);
        Finding.Unless(
            status is ExitStatus.Holds or ExitStatus.DoesNotHold or ExitStatus.WrongInput, $"{command}: {status}\n{Text(error)}");
        Finding.Unless(
            (status == ExitStatus.WrongInput) == (output.Length == 0) && (status == ExitStatus.WrongInput) == (error.Length > 0),
            $"{command}: {status} with {output.Length} bytes of result\n{Text(error)}");
        foreach (string noNumber in s_noNumbers.Where(word => !Encoding.UTF8.GetString(input).Contains(word, StringComparison.Ordinal)))
        {
            Finding.Unless(!Text(output).Contains(noNumber, StringComparison.Ordinal), $"{command} prints {noNumber}\n{Text(output)}");
        }
    }

    private static string Text(MemoryStream stream) => Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
}
