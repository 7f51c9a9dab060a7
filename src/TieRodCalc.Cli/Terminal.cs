using System.Text;

namespace TieRodCalc.Cli;

/// <summary>Where a command reads and writes. Text is UTF-8 whatever the locale.</summary>
/// <param name="Input">Standard input.</param>
/// <param name="Output">Standard output: results, and nothing else.</param>
/// <param name="Error">Standard error: everything else.</param>
internal sealed record Terminal(Stream Input, Stream Output, Stream Error)
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>Writes a result, whole.</summary>
    public void Write(string text) => Write(Output, text);

    /// <summary>Writes to standard error.</summary>
    public void Complain(string text) => Write(Error, text);

    /// <summary>A reader that has closed its end of the pipe has seen enough: that is no fault.</summary>
    private static void Write(Stream stream, string text)
    {
        try
        {
            stream.Write(Utf8.GetBytes(text));
            stream.Flush();
        }
        catch (IOException error) when (IsBrokenPipe(error))
        {
            // Nobody reads on.
        }
    }

    private static bool IsBrokenPipe(IOException error)
    {
        const int BrokenPipeOfUnix = 32;
        const int BrokenPipeOfWindows = unchecked((int)0x8007006D);
        const int NoDataOfWindows = unchecked((int)0x800700E8);
        return error.HResult is BrokenPipeOfUnix or BrokenPipeOfWindows or NoDataOfWindows;
    }
}
