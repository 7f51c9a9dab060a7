using System.Text;
using Microsoft.Win32.SafeHandles;
using TieRodCalc.Cli;

return Application.Run(args, new Terminal(OpenInput, OpenOutput(), Console.OpenStandardError())
{
    IsTyped = !Console.IsInputRedirected,
    AsciiAlone = OperatingSystem.IsWindows()
        ? !Console.IsOutputRedirected && Console.OutputEncoding.CodePage != Encoding.UTF8.CodePage
        : Locale.IsAsciiAlone(
            Environment.GetEnvironmentVariable("LC_ALL"),
            Environment.GetEnvironmentVariable("LC_CTYPE"),
            Environment.GetEnvironmentVariable("LANG")),
});

// The console's own stream says nothing where the reader of a pipe has gone. A stream on the descriptor does; but where it can
// seek, on a file, it would keep a place of its own and write over what a command beside this one has written.
static Stream OpenOutput()
{
    const int StandardOutput = 1;
    if (!OperatingSystem.IsWindows())
    {
        FileStream direct = new(new SafeFileHandle(StandardOutput, ownsHandle: false), FileAccess.Write, bufferSize: 0);
        if (!direct.CanSeek)
        {
            return direct;
        }
    }

    return Console.OpenStandardOutput();
}

// The console's own stream edits the line of a terminal itself, and asks the terminal where it stands to do so; the terminal's own
// editing does for answers, and leaves it as it was when a signal ends the program.
static Stream OpenInput()
{
    const int StandardInput = 0;
    return Console.IsInputRedirected || OperatingSystem.IsWindows()
        ? Console.OpenStandardInput()
        : new FileStream(new SafeFileHandle(StandardInput, ownsHandle: false), FileAccess.Read, bufferSize: 0);
}
