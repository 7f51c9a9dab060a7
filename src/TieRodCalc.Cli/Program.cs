using System.Text;
using Microsoft.Win32.SafeHandles;
using TieRodCalc.Cli;

const int StandardInput = 0;
const int StandardOutput = 1;
const int StandardError = 2;
return Application.Run(args, new Terminal(OpenInput, OpenOutput(), OpenError())
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
    if (IsClosed(StandardOutput))
    {
        return new MemoryStream([], writable: false);
    }

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
static Stream OpenInput() =>
    IsClosed(StandardInput) ? Stream.Null
    : Console.IsInputRedirected || OperatingSystem.IsWindows() ? Console.OpenStandardInput()
    : new FileStream(new SafeFileHandle(StandardInput, ownsHandle: false), FileAccess.Read, bufferSize: 0);

static Stream OpenError() => IsClosed(StandardError) ? Stream.Null : Console.OpenStandardError();

// Where a descriptor is closed at the start, the runtime gets its number for a pipe of its own: to read from it waits forever, and what
// is written into it is lost. Such a pipe is told by its mark that it is closed in programs started from here, which ours never have.
static bool IsClosed(int descriptor)
{
    const int CloseOnExec = 0x80000;
    const string Flags = "flags:";
    if (!OperatingSystem.IsLinux())
    {
        return false;
    }

    try
    {
        foreach (string line in File.ReadLines($"/proc/self/fdinfo/{descriptor}"))
        {
            if (line.StartsWith(Flags, StringComparison.Ordinal))
            {
                return (Convert.ToInt32(line[Flags.Length..].Trim(), fromBase: 8) & CloseOnExec) != 0;
            }
        }
    }
    catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or FormatException)
    {
        // A system that does not say it is taken to be in order.
    }

    return false;
}
