using TieRodCalc.Planning;
using TieRodCalc.Text;
using TieRodCalc.Yaml.Binding;
using TieRodCalc.Yaml.Tree;

namespace TieRodCalc.Yaml;

/// <summary>Reads a job and the part files that it names.</summary>
internal static class JobBinder
{
    /// <summary>The job, or null where it or a part file has a problem.</summary>
    /// <param name="file">The file, which is a job.</param>
    /// <param name="folder">The folder that its part files are relative to.</param>
    /// <param name="files">The job and its part files, with what was found in them.</param>
    public static Job? Bind(LoadedFile file, string folder, out List<LoadedFile> files)
    {
        MapReader top = file.Top!;
        PartFiles parts = new(top, folder);
        parts.Read();
        files = [file, .. parts.Files];
        PartTables tables = PartTables.Of(files, parts.Whole);
        LengthDisplay units = top.Choose("units", Choices.Units) ?? LengthDisplay.Inch;
        MapReader? ruleMap = top.Map("rules", Keys.JobRules);
        PlanRules rules = Rules.Read(ruleMap).Over(units == LengthDisplay.Inch ? PlanRules.Inch : PlanRules.Metric);
        (SteeringSetup steering, JobToe? toe, Problem? noToe) = SteeringBinder.Bind(top);
        List<JobRod> rods = new RodBinder(file, tables, rules, steering).Bind(top);
        List<JobCorner> corners = CornerBinder.Bind(top, steering);
        tables.Swings.Report(rods, corners);
        Job job = new()
        {
            Name = top.Line("job"),
            Units = units,
            Toe = toe,
            NoToe = noToe,
            Rods = rods,
            Bump = BumpSheetBinder.Bind(top),
            BumpLimits = BumpRules.Read(ruleMap),
            Corners = corners,
            Steering = steering,
            Catalog = tables.ToCatalog(),
        };
        return files.TrueForAll(each => each.Findings.Count == 0) ? job : null;
    }
}
