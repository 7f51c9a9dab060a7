using System.Runtime.InteropServices;

namespace TieRodCalc.Cli;

/// <summary>Holds off the signals that end the program while files are on their way, so that none is left half.</summary>
internal sealed class Interruption : IDisposable
{
    private readonly PosixSignalRegistration[] _signals;
    private volatile bool _asked;

    public Interruption() => _signals =
    [
        .. new[] { PosixSignal.SIGINT, PosixSignal.SIGTERM, PosixSignal.SIGHUP }
            .Select(signal => PosixSignalRegistration.Create(signal, context =>
            {
                context.Cancel = true;
                _asked = true;
            })),
    ];

    /// <summary>Ends what is being done where a signal has asked for it.</summary>
    /// <exception cref="OperationCanceledException">A signal has come.</exception>
    public void ThrowIfAsked()
    {
        if (_asked)
        {
            throw new OperationCanceledException();
        }
    }

    public void Dispose() => Array.ForEach(_signals, signal => signal.Dispose());
}
