using TieRodCalc.Text;

namespace TieRodCalc.Tests.Text;

/// <summary>What the tests of texts ask again and again.</summary>
internal static class Expect
{
    public static void Fault(ParseFault? fault, int offset, int length, string phrase)
    {
        Assert.NotNull(fault);
        Assert.Contains(phrase, fault.Message, StringComparison.Ordinal);
        Assert.Equal((offset, length), (fault.Offset, fault.Length));
    }
}
