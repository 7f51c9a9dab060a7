using System.Text;
using TieRodCalc.Tests.Architecture;
using TieRodCalc.Text;
using TieRodCalc.Threads;

namespace TieRodCalc.Tests.Text;

/// <summary>
/// What is said of texts that are no values, with the place of the fault: Refusals.txt has each text and below it what was last accepted.
/// Set the environment variable TIERODCALC_UPDATE_DOCS to write the answers anew.
/// </summary>
public class RefusalTests
{
    private static readonly Dictionary<string, Func<string, ParseFault?>> s_readers = new()
    {
        ["length"] = text => LengthText.Parse(text).Fault,
        ["exact"] = text => LengthText.ParseExact(text).Fault,
        ["signed"] = text => LengthText.ParseSigned(text).Fault,
        ["thread"] = text => ThreadText.Parse(text).Fault,
        ["external thread"] = text => ThreadText.Parse(text, ThreadGender.External).Fault,
        ["internal thread"] = text => ThreadText.Parse(text, ThreadGender.Internal).Fault,
        ["stress"] = text => ValueText.ParseStress(text).Fault,
        ["force"] = text => ValueText.ParseForce(text).Fault,
        ["angle"] = text => ValueText.ParseAngle(text).Fault,
        ["mass"] = text => ValueText.ParseMass(text).Fault,
        ["outside"] = text => ValueText.ParseOutside(text).Fault,
        ["engagement"] = text => ValueText.ParseEngagement(text).Fault,
        ["price"] = text => ValueText.ParsePrice(text).Fault,
        ["toe"] = text => ValueText.ParseToe(text).Fault,
    };

    [Fact]
    public void Each_fault_is_told_at_its_place_as_accepted()
    {
        string[] place = ["tests", "TieRodCalc.Tests", "Text", "Refusals.txt"];
        StringBuilder after = new();
        string reader = "";
        foreach (string line in AcceptedFile.Read(place).Split('\n')[..^1].Where(line => !line.StartsWith("    ", StringComparison.Ordinal)))
        {
            after.Append(line).Append('\n');
            if (line.StartsWith('['))
            {
                reader = line.Trim('[', ']');
            }
            else if (line.StartsWith('>'))
            {
                ParseFault? fault = s_readers[reader]((line.Length > 2 ? line[2..] : "").Replace("\\1", "\u0001", StringComparison.Ordinal));
                after.Append(fault is null ? "    is read\n" : $"    {fault.Offset}, {fault.Length}: {fault.Message}\n");
            }
        }

        AcceptedFile.AssertIs(after.ToString(), place);
    }
}
