using TieRodCalc.Parts;
using TieRodCalc.Text;
using TieRodCalc.Yaml.Tree;

namespace TieRodCalc.Yaml.Binding;

/// <summary>Reads the materials of a file.</summary>
internal static class MaterialBinder
{
    public static void Bind(LoadedFile file, PartTables tables)
    {
        if (file.Root?.Find("materials")?.Value is not ListNode list)
        {
            return;
        }

        foreach (Node item in list.Items)
        {
            if (MapReader.OpenItem(item, "material", Keys.Material, file) is { } map)
            {
                int before = file.Findings.Count;
                ScalarNode? id = Ids.Read(map);
                Material material = new(id?.Value ?? string.Empty)
                {
                    Name = map.Line("name"),
                    Kind = map.Choose("kind", Choices.Material),
                    TensileStrength = map.Value("tensile", ValueText.ParseStress),
                    Source = map.Line("source"),
                };
                tables.Materials.Add(id, file.Findings.Count == before ? material : null, file);
            }
        }
    }
}
