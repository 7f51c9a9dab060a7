namespace TieRodCalc.Cli;

/// <summary>The exit statuses of the command line.</summary>
internal static class ExitStatus
{
    /// <summary>Everything asked for holds at nominal dimensions.</summary>
    public const int Holds = 0;

    /// <summary>Computed, but a rod is not buildable, not locked, gives way under the load of the job, or is not to be turned as wanted.</summary>
    public const int DoesNotHold = 1;

    /// <summary>Input or command line wrong, or a file that cannot be read or written.</summary>
    public const int WrongInput = 2;

    /// <summary>A fault of the program itself.</summary>
    public const int Fault = 70;

    /// <summary>Interrupted by a signal.</summary>
    public const int Interrupted = 130;
}
