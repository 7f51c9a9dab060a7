using TieRodCalc.Yaml.Tree;

namespace TieRodCalc.Yaml.Binding;

/// <summary>Checks <c>bump</c> and <c>corner</c> of a job, which this version does not use yet.</summary>
internal static class BumpSheets
{
    public static void Check(MapReader job)
    {
        if (job.Find("bump") is { } bump)
        {
            job.Findings.NotUsedYet("bump", bump.Key.Span);
            foreach (Node item in job.List("bump")?.Items ?? [])
            {
                if (MapReader.OpenItem(item, "bump sheet", Keys.Sheet, job.File) is { } sheet)
                {
                    CheckSheet(sheet);
                }
            }
        }

        if (job.Find("corner") is { } corner)
        {
            job.Findings.NotUsedYet("corner", corner.Key.Span);
            if (job.Map("corner", Keys.Sides) is { } sides)
            {
                CheckCorner(sides, "left");
                CheckCorner(sides, "right");
            }
        }
    }

    private static void CheckSheet(MapReader sheet)
    {
        sheet.Choose("side", Choices.Side, needed: true);
        if (sheet.Map("gauge", Keys.Gauge, needed: true) is { } gauge)
        {
            gauge.Dimension("spacing", Least.AboveZero, needed: true);
            gauge.Choose("zeroed", Choices.EachStep, needed: true);
            gauge.Choose("grows", Choices.Inward, needed: true);
            gauge.Exact("resolution", Least.AboveZero);
        }

        foreach (Node item in sheet.List("readings", needed: true)?.Items ?? [])
        {
            if (MapReader.OpenItem(item, "reading", Keys.Reading, sheet.File) is { } reading)
            {
                reading.Signed("travel", needed: true);
                reading.Signed("front", needed: true);
                reading.Signed("rear", needed: true);
            }
        }

        if (sheet.Map("then", Keys.Then) is { } then)
        {
            then.Signed("outer_raised");
            then.Signed("rod_longer");
        }
    }

    private static void CheckCorner(MapReader sides, string side)
    {
        if (sides.Map(side, Keys.CornerSide) is { } map)
        {
            CheckWishbone(map, "lower");
            CheckWishbone(map, "upper");
            map.Point("wheel");
        }
    }

    private static void CheckWishbone(MapReader corner, string key)
    {
        if (corner.Map(key, Keys.Wishbone) is { } wishbone)
        {
            wishbone.TwoPoints("axis");
            wishbone.Point("ball");
        }
    }
}
