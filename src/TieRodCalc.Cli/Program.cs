using Microsoft.Win32.SafeHandles;
using TieRodCalc.Cli;

return Application.Run(args, new Terminal(Console.OpenStandardInput, OpenOutput(), Console.OpenStandardError())
{
    IsTyped = !Console.IsInputRedirected,
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
