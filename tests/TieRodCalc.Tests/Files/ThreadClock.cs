using System.Diagnostics;
using System.Runtime.InteropServices;

namespace TieRodCalc.Tests.Files;

/// <summary>What the present thread has computed, so that other work does not count; any time where the system does not say.</summary>
internal static class ThreadClock
{
    private const int OfThread = 3;

    public static TimeSpan Now => OperatingSystem.IsLinux() && GetTime(OfThread, out Seconds time) == 0
        ? TimeSpan.FromSeconds(time.Whole) + TimeSpan.FromMicroseconds(time.Nano / 1000)
        : Stopwatch.GetElapsedTime(0);

    [DllImport("libc", EntryPoint = "clock_gettime")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int GetTime(int clock, out Seconds time);

    [StructLayout(LayoutKind.Sequential)]
    private readonly record struct Seconds(nint Whole, nint Nano);
}
