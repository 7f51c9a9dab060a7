using System.Text;

namespace TieRodCalc.Cli;

/// <summary>Where a command reads and writes. Text is UTF-8 whatever the locale.</summary>
/// <param name="Input">Opens standard input.</param>
/// <param name="Output">Standard output: results, and nothing else.</param>
/// <param name="Error">Standard error: everything else.</param>
internal sealed record Terminal(Func<Stream> Input, Stream Output, Stream Error)
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>Whether a person types standard input, and so sees it already.</summary>
    public bool IsTyped { get; init; }

    /// <summary>Whether drawings are to be made of ASCII alone.</summary>
    public bool AsciiAlone { get; init; }

    /// <summary>Writes a result, whole.</summary>
    /// <returns>
    /// Null where it was written; otherwise the exit status that is left: a reader that has closed its end of the pipe has seen
    /// enough, and anything else is a fault, which has been said then.
    /// </returns>
    public int? Write(string text)
    {
        switch (Try(Output, text))
        {
            case null:
                return null;
            case { } fault when IsBrokenPipe(fault):
                return ExitStatus.Holds;
            case { } fault:
                Complain($"tierodcalc: the result cannot be written: {(Output.CanWrite ? fault.Message : "standard output is closed")}\n");
                return ExitStatus.WrongInput;
        }
    }

    /// <summary>Writes to standard error; where that cannot be written, there is nobody to tell.</summary>
    public void Complain(string text) => _ = Try(Error, text);

    private static Exception? Try(Stream stream, string text)
    {
        try
        {
            stream.Write(Utf8.GetBytes(text));
            stream.Flush();
            return null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            return fault;
        }
    }

    private static bool IsBrokenPipe(Exception fault)
    {
        const int BrokenPipeOfUnix = 32;
        const int BrokenPipeOfWindows = unchecked((int)0x8007006D);
        const int NoDataOfWindows = unchecked((int)0x800700E8);
        return fault.HResult is BrokenPipeOfUnix or BrokenPipeOfWindows or NoDataOfWindows;
    }
}
